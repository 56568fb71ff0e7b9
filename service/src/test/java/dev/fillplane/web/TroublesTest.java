package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a plan says for the case that the pour goes wrong. */
class TroublesTest {

  @Test
  void casesOfTheSampleFloor() {
    JsonNode plan = plan(RunningService.sample());
    assertEquals(
        List.of("drill-dies", "power-off", "leak", "clump", "bags-short", "edge-lost"),
        texts(plan.at("/troubles/cases"), "code"));
    for (JsonNode trouble : plan.at("/troubles/cases")) {
      assertTrue(trouble.get("bags").intValue() > 0);
      assertFalse(trouble.at("/nextDay/text").textValue().isBlank());
    }
    double oldest = 0;
    for (JsonNode batch : plan.at("/pour/batches")) {
      oldest = Math.max(oldest, batch.path("edgeAge").doubleValue());
    }
    double standstill = Math.max(0, plan.at("/mix/healingTime").doubleValue() - oldest);
    assertEquals(standstill, plan.at("/troubles/standstill").doubleValue(), 1e-9);
  }

  /** Room after room, each against a board in its doorway. */
  @Test
  void stopsOfTheSampleFloor() {
    JsonNode plan = plan(RunningService.sample());
    JsonNode stops = plan.at("/troubles/stops");
    assertEquals(plan.at("/pour/bays").size() - 1, stops.size());
    int bags = plan.at("/pour/totals/bags").intValue();
    for (int i = 0; i < stops.size(); i++) {
      JsonNode stop = stops.get(i);
      assertEquals(plan.at("/pour/bays/" + i + "/id"), stop.get("bay"));
      assertEquals(bags, stop.get("bagsUsed").intValue() + stop.get("bagsLeft").intValue());
      assertEquals(1, stop.get("joints").size());
      assertTrue(stop.at("/joints/0/opening").textValue().endsWith("door"));
    }
  }

  /** A cool day: a spare drill may take a while. A hot one: the edge is lost as planned. */
  @Test
  void numbersAreToldInTheText() {
    ObjectNode request = RunningService.sample();
    request.withObject("crew").put("people", 4).put("mixers", 2).put("barrels", 4);
    day(request, 15, 10);
    JsonNode cool = plan(request);
    double standstill = cool.at("/troubles/standstill").doubleValue();
    assertTrue(standstill > 1, "standstill " + standstill);
    String power = cool.at("/troubles/cases/1/now/text").textValue();
    assertTrue(power.contains("can wait " + Math.round(standstill * 10) / 10.0 + " min"), power);
    assertEquals("edge-waits-longest", cool.at("/troubles/cases/5/now/code").textValue());
    day(request, 35, 35);
    JsonNode hot = plan(request);
    assertEquals("edge-is-lost-as-planned", hot.at("/troubles/cases/5/now/code").textValue());
    assertEquals(0, hot.at("/troubles/standstill").doubleValue());
  }

  private static void day(ObjectNode request, double air, double water) {
    request
        .withObject("conditions")
        .put("air", air)
        .put("floor", air)
        .put("powder", air)
        .put("water", water);
  }

  /** A target under the floor: nothing to pour, nothing to go wrong. */
  @Test
  void noneWhereNothingIsPoured() {
    ObjectNode request = Surveyed.room("metric", 4, 3, 1, (x, y) -> 0);
    request.set("target", Refusals.tree("{'shape':'given','elevation':-10}"));
    JsonNode plan = plan(request);
    assertEquals(0, plan.at("/pour/batches").size());
    assertEquals(0, plan.at("/troubles/cases").size());
    assertEquals(0, plan.at("/troubles/stops").size());
    assertEquals(0, plan.at("/troubles/standstill").doubleValue());
  }

  private static List<String> texts(JsonNode array, String property) {
    List<String> texts = new ArrayList<>();
    array.forEach(element -> texts.add(element.get(property).textValue()));
    return texts;
  }

  private static JsonNode plan(ObjectNode request) {
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
