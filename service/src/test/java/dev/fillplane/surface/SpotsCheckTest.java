package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpotsCheckTest {

  @Test
  void tooFew() {
    Findings findings = new Findings();
    Place place = Place.root().at("survey");
    SpotsCheck.check(at(new double[] {0, 1}, new double[] {0, 5}), place, findings);
    assertEquals("too-few-readings", findings.errors().get(0).code());
    assertEquals(Map.of("count", 2), findings.errors().get(0).values());
    assertEquals(place, findings.errors().get(0).place());
    assertEquals(Optional.of("too-few-readings"), unfit(new double[0], new double[0]));
  }

  @Test
  void onALine() {
    Optional<String> line = Optional.of("readings-on-a-line");
    assertEquals(line, unfit(new double[] {0, 1, 2, 5}, new double[] {0, 2, 4, 10}));
    assertEquals(line, unfit(new double[] {3, 3, 3}, new double[] {0, 2, 4}));
    assertEquals(line, unfit(new double[] {0, 4, 4}, new double[] {0, 1, 1}));
    assertEquals(line, unfit(new double[] {1, 1, 1}, new double[] {1, 1, 1}));
    assertEquals(line, unfit(new double[] {0, 10, 20}, new double[] {0, 0.002, 0}));
    assertEquals(line, unfit(new double[] {1e6, 1e6 + 1, 1e6 + 2}, new double[] {1e6, 1e6, 1e6}));
  }

  @Test
  void fit() {
    assertEquals(Optional.empty(), unfit(new double[] {0, 4, 0}, new double[] {0, 0, 3}));
    assertEquals(Optional.empty(), unfit(new double[] {0, 10, 20}, new double[] {0, 0.2, 0}));
    assertEquals(
        Optional.empty(),
        unfit(new double[] {0, 1, 1, 1, 1, 1, 1}, new double[] {0, 0, 1, 1, 1, 1, 1}));
    assertEquals(
        Optional.empty(),
        unfit(new double[] {1e6, 1e6 + 4, 1e6}, new double[] {2e6, 2e6, 2e6 + 3}));
  }

  private static Optional<String> unfit(double[] x, double[] y) {
    return SpotsCheck.unfit(at(x, y));
  }

  private static Spots at(double[] x, double[] y) {
    return Floors.spots(x, y, (a, b) -> 0);
  }
}
