package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProbesTest {

  @Test
  void probesComeFromTheSurface() {
    Findings findings = new Findings();
    List<Probe> probes =
        Probes.of(
            List.of(new ProbeWish("in", 1.234, 0.777), new ProbeWish("out", 5, 3)),
            TestFloors.surface(TestFloors::waves),
            DepthField.of(
                sample(TestFloors::waves, 0.1, room("l", L_ROOM)), new Plane(0.01, 0.001, 0)),
            List.of(room("l", L_ROOM)),
            Place.root().at("probes"),
            findings);
    double floor = TestFloors.waves(1.234, 0.777);
    assertEquals(new Probe("in", floor, 0.001, 0.01 + 0.001 * 1.234 - floor), probes.get(0));
    assertEquals("out", probes.get(1).id());
    Finding outside = findings.warnings().get(0);
    assertEquals("probe-outside", outside.code());
    assertEquals("#/probes/1", outside.place().toString());
    assertEquals(1, findings.warnings().size());
  }
}
