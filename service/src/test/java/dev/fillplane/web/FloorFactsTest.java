package dev.fillplane.web;

import static dev.fillplane.web.Surveyed.plan;
import static dev.fillplane.web.Surveyed.reading;
import static dev.fillplane.web.Surveyed.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a floor layer knows of floors, and what more readings and known steps do. */
class FloorFactsTest {

  /**
   * About 3/4 in of gap along both sides, little in the middle, 1 in in a corner: it comes out as
   * that, deepest in the corner. Common practice, no source.
   */
  @Test
  void hollowSidesAndACorner() {
    ObjectNode request = room("us", 12, 12);
    for (int i = 0; i < 7; i++) {
      double y = 0.5 + i * 11 / 6.0;
      reading(request, "w" + i, 0.5, y, i == 0 ? -1.0 : -0.75);
      reading(request, "e" + i, 11.5, y, -0.75);
      reading(request, "m" + i, 6, y, -0.1);
    }
    request.set("target", Refusals.tree("{'elevation':0}"));
    request.set(
        "probes",
        Refusals.tree(
            "[{'id':'west','x':0.5,'y':6},{'id':'east','x':11.5,'y':6},"
                + "{'id':'middle','x':6,'y':6},{'id':'corner','x':0.5,'y':0.5}]"));
    JsonPath answer = plan("/v1/depth-fields", request);
    assertEquals(0.75, answer.getDouble("depth.probes[0].depth"), 0.06);
    assertEquals(0.75, answer.getDouble("depth.probes[1].depth"), 0.06);
    assertEquals(0.1, answer.getDouble("depth.probes[2].depth"), 0.06);
    assertEquals(1.0, answer.getDouble("depth.probes[3].depth"), 0.1);
    assertTrue(answer.getDouble("depth.deepest.x") < 2, answer.getString("depth.deepest"));
    assertTrue(answer.getDouble("depth.deepest.y") < 2, answer.getString("depth.deepest"));
  }

  /** More readings of the same floors narrow the odds of the volume, on average. */
  @Test
  void moreReadingsNarrowTheOdds() {
    double few = 0;
    double many = 0;
    for (int seed = 1; seed <= 12; seed++) {
      few += spread(seed, 12);
      many += spread(seed, 40);
    }
    assertTrue(many < 0.75 * few, many + " of " + few);
  }

  private static double spread(int seed, int readings) {
    Random random = new Random(seed);
    double phase = 6 * random.nextDouble();
    ObjectNode request = room("metric", 6, 4);
    for (int i = 0; i < readings; i++) {
      double x = 6 * random.nextDouble();
      double y = 4 * random.nextDouble();
      double floor = 3 * Math.sin(1.1 * x + phase) + 2 * Math.cos(1.3 * y + phase);
      reading(request, "p" + i, x, y, floor + random.nextGaussian());
    }
    request.set("target", Refusals.tree("{'elevation':12}"));
    JsonPath answer = plan("/v1/depth-fields", request);
    return answer.getDouble("depth.volumeOdds.p90") - answer.getDouble("depth.volumeOdds.p10");
  }

  /** The floor jumps by 6 mm at x = 3, as told; without the step it would be smeared. */
  @Test
  void knownStepIsKept() {
    ObjectNode request = steppedFloor();
    request.set("surface", Refusals.tree("{'steps':[{'from':[3,0],'to':[3,4]}]}"));
    JsonPath answer = plan("/v1/depth-fields", request);
    assertEquals(0, answer.getDouble("depth.probes[0].elevation"), 0.2);
    assertEquals(6, answer.getDouble("depth.probes[1].elevation"), 0.2);
    JsonPath smeared = plan("/v1/depth-fields", steppedFloor());
    assertTrue(smeared.getDouble("depth.probes[0].elevation") > 1);
  }

  private static ObjectNode steppedFloor() {
    ObjectNode request = room("metric", 6, 4);
    for (int i = 0; i < 24; i++) {
      double x = 0.5 + i % 6;
      reading(request, "p" + i, x, 0.4 + 1.05 * Math.floorDiv(i, 6), x < 3 ? 0 : 6);
    }
    request.set(
        "probes", Refusals.tree("[{'id':'left','x':2.8,'y':2},{'id':'right','x':3.2,'y':2}]"));
    return request;
  }

  @Test
  void stepWithoutLength() {
    ObjectNode request = steppedFloor();
    request.set("surface", Refusals.tree("{'steps':[{'from':[3,0],'to':[3,0]}]}"));
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(422, answer.statusCode());
    assertEquals("step-without-length", answer.path("errors[0].code"));
    assertEquals("#/surface/steps/0", answer.path("errors[0].pointer"));
  }

  @Test
  void stepWithReadingsOnOneSideOnly() {
    ObjectNode request = steppedFloor();
    request.set("surface", Refusals.tree("{'steps':[{'from':[0.1,0],'to':[0.1,4]}]}"));
    JsonPath answer = plan("/v1/depth-fields", request);
    assertTrue(answer.getList("warnings.code").contains("step-without-readings"));
  }

  @Test
  void stepThatIsNoLine() {
    ObjectNode request = steppedFloor();
    request.set("surface", Refusals.tree("{'steps':[{'from':[3],'to':[3,4]}]}"));
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(422, answer.statusCode());
    assertEquals("#/surface/steps/0/from", answer.path("errors[0].pointer"));
  }

  /** Shares of what drives the bags add up to all of it; the rooms' volumes to the whole. */
  @Test
  void partsAddUp() {
    JsonPath answer = plan("/v1/plans", RunningService.sample());
    double shares = 0;
    for (Object share : answer.getList("quantities.drivers.share")) {
      shares += ((Number) share).doubleValue();
    }
    assertEquals(1, shares, 1e-6);
    double volumes = 0;
    for (Object volume : answer.getList("depth.rooms.volume")) {
      volumes += ((Number) volume).doubleValue();
    }
    assertEquals(answer.getDouble("depth.volume"), volumes, 1e-3);
  }
}
