package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.fuzz.Retold;
import io.restassured.response.Response;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** How a floor is told must not change what it is. */
class InvarianceTest {

  /** Where nothing but the order of sums differs. */
  private static final Slack EXACT = new Slack(1e-9, 1e-9, 1e-9);

  /** Where coordinates lose digits. */
  private static final Slack FAR_OFF = new Slack(1e-8, 1e-6, 1e-6);

  /** Where the cells lie differently on the floor, and random floors are drawn at other places. */
  private static final Slack OTHER_CELLS = new Slack(1e-5, 0.05, 0.25);

  /**
   * What may differ.
   *
   * @param relative of volumes and areas
   * @param height in mm
   * @param odds in parts of the spread from p50 to p90
   */
  private record Slack(double relative, double height, double odds) {}

  /** Metric and US answers, relative. */
  private static final double UNITS = 1e-9;

  /** Metric grid depths are rounded to 0.01 mm, the others to 0.001 in. */
  private static final double GRID_ROUNDING = 0.005 + 0.0005 * 25.4;

  // --- units

  @Test
  void unitsDoNotMatter() {
    JsonNode metric = withoutSteps(bare(plan(RunningService.sample())));
    JsonNode us = withoutSteps(bare(plan(RunningService.example("sample-us.json"))));
    Differences.none(metric, Metric.of("Plan", us), UNITS, 600);
  }

  /** Savings are told in steps of millimetres or of sixteenths of an inch. */
  private static JsonNode withoutSteps(JsonNode plan) {
    ((ObjectNode) plan.get("grinding")).remove("savings");
    return plan;
  }

  @Test
  void gridInOtherUnitsIsTheSameToItsRounding() {
    JsonNode metric = plan(RunningService.sample()).at("/depth/grid");
    JsonNode us =
        Metric.of("Plan", plan(RunningService.example("sample-us.json"))).at("/depth/grid");
    assertEquals(metric.get("depths").size(), us.get("depths").size());
    for (int i = 0; i < metric.get("depths").size(); i++) {
      double depth = metric.get("depths").get(i).doubleValue();
      if (depth >= 0) {
        assertEquals(depth, us.get("depths").get(i).doubleValue(), GRID_ROUNDING + 1e-9);
      }
    }
    for (String name : List.of("originX", "originY", "cell", "columns", "rows")) {
      assertEquals(metric.get(name).doubleValue(), us.get(name).doubleValue(), UNITS, name);
    }
  }

  /**
   * Without texts, the codes of units, the digest, and what is made for the eye in round numbers of
   * its own units: contours and the grid's depths. The lifting equation has rounded constants of
   * its own in each system, so that its note is apart.
   */
  private static JsonNode bare(JsonNode plan) {
    ObjectNode bare = plan.deepCopy();
    bare.remove(List.of("units", "unitCodes"));
    ((ObjectNode) bare.get("computed")).remove("inputDigest");
    ((ObjectNode) bare.get("depth")).remove(List.of("contours", "grid"));
    ((ObjectNode) bare.get("surface")).remove("deviations");
    for (JsonNode note : bare.get("safety")) {
      if (note.get("code").asText().equals("bag-lifting")) {
        ((ObjectNode) note).removeAll();
      }
    }
    for (String list :
        List.of("/safety", "/warnings", "/pour/reasons", "/pour/changes", "/drying/curing")) {
      bare.at(list).forEach(said -> ((ObjectNode) said).remove(List.of("text", "detail")));
    }
    bare.at("/troubles").findParents("text").forEach(said -> ((ObjectNode) said).remove("text"));
    return bare;
  }

  // --- place on plan

  @Test
  void shiftedPlan() {
    ObjectNode shifted = RunningService.sample();
    Retold.move(shifted, (x, y) -> new double[] {x + 1000.5, y - 2000.25});
    same(plan(RunningService.sample()), plan(shifted), FAR_OFF);
  }

  @Test
  void turnedPlan() {
    ObjectNode turned = RunningService.sample();
    Retold.move(turned, Retold.turn(Math.toRadians(37)));
    same(plan(RunningService.sample()), plan(turned), OTHER_CELLS);
  }

  // --- order and names

  @Test
  void orderOfReadings() {
    ObjectNode shuffled = RunningService.sample();
    for (JsonNode setup : shuffled.at("/survey/setups")) {
      Retold.shuffle(setup.get("readings"), new Random(8));
    }
    same(plan(RunningService.sample()), plan(shuffled), EXACT);
  }

  @Test
  void orderOfSetups() {
    ObjectNode turned = RunningService.sample();
    List<JsonNode> setups = Trees.elements(turned.at("/survey/setups"));
    Collections.reverse(setups);
    Trees.refill(turned.at("/survey/setups"), setups);
    same(plan(RunningService.sample()), plan(turned), EXACT);
  }

  @Test
  void orderOfRooms() {
    for (int seed = 0; seed < 3; seed++) {
      ObjectNode shuffled = RunningService.sample();
      List<JsonNode> rooms = Trees.elements(shuffled.get("rooms"));
      Collections.rotate(rooms, seed);
      if (seed == 0) {
        Collections.reverse(rooms);
      }
      Trees.refill(shuffled.get("rooms"), rooms);
      same(plan(RunningService.sample()), plan(shuffled), EXACT);
    }
  }

  @Test
  void namesOfPoints() {
    ObjectNode renamed = RunningService.sample();
    Map<String, String> names = new TreeMap<>();
    for (JsonNode setup : renamed.at("/survey/setups")) {
      for (JsonNode reading : setup.get("readings")) {
        String name =
            names.computeIfAbsent(reading.get("point").asText(), n -> "" + (900 - names.size()));
        ((ObjectNode) reading).put("point", name);
      }
    }
    ((ObjectNode) renamed.at("/survey/benchmarks/0")).put("point", names.get("BM"));
    same(plan(RunningService.sample()), plan(renamed), EXACT);
  }

  // --- how

  private static void same(JsonNode expected, JsonNode actual, Slack slack) {
    for (String place :
        List.of(
            "/depth/area",
            "/depth/pouredArea",
            "/depth/volume",
            "/depth/mean",
            "/quantities/perimeterSeal",
            "/mix/workingTime",
            "/mix/healingTime",
            "/pour/minutes",
            "/surface/variogram/sill",
            "/surface/variogram/range",
            "/surface/crossValidation/rmse")) {
      double value = number(expected, place);
      assertEquals(value, number(actual, place), slack.relative() * value, place);
    }
    for (String place :
        List.of(
            "/target/elevation",
            "/depth/maximum",
            "/depth/minimum",
            "/depth/deepest/depth",
            "/flatness/before/gap",
            "/flatness/after/gap")) {
      assertEquals(number(expected, place), number(actual, place), slack.height(), place);
    }
    sameOdds(expected, actual, slack.odds());
    sameProbes(expected, actual);
    sameCounts(expected, actual);
  }

  private static void sameOdds(JsonNode expected, JsonNode actual, double odds) {
    double spread =
        number(expected, "/depth/volumeOdds/p90") - number(expected, "/depth/volumeOdds/p50");
    assertTrue(spread > 0);
    for (String place :
        List.of("/depth/volumeOdds/p10", "/depth/volumeOdds/p50", "/depth/volumeOdds/p90")) {
      assertEquals(number(expected, place), number(actual, place), odds * spread, place);
    }
    assertEquals(number(expected, "/target/bareOdds"), number(actual, "/target/bareOdds"), odds);
  }

  /** The surface knows no cells. */
  private static void sameProbes(JsonNode expected, JsonNode actual) {
    assertEquals(4, expected.at("/depth/probes").size());
    for (int i = 0; i < 4; i++) {
      for (String height : List.of("/elevation", "/deviation", "/depth")) {
        String place = "/depth/probes/" + i + height;
        assertEquals(number(expected, place), number(actual, place), 1e-6, place);
      }
    }
  }

  private static void sameCounts(JsonNode expected, JsonNode actual) {
    for (String bags : List.of("likely", "p10", "p50", "p90", "order")) {
      String place = "/quantities/bags/" + bags;
      assertEquals(expected.at(place), actual.at(place), place);
    }
    String left = "/quantities/bags/leftOver";
    assertEquals(number(expected, left), number(actual, left), 0.1, left);
    assertEquals(expected.at("/pour/verdict"), actual.at("/pour/verdict"));
    assertEquals(rooms(expected), rooms(actual));
    assertEquals(ribbons(expected), ribbons(actual));
    assertEquals(expected.get("pins").size(), actual.get("pins").size());
    assertEquals(expected.get("rails").size(), actual.get("rails").size());
    assertEquals(codes(expected.get("warnings")), codes(actual.get("warnings")));
  }

  /** Ribbons by bay. */
  private static Map<String, Integer> ribbons(JsonNode plan) {
    Map<String, Integer> ribbons = new TreeMap<>();
    plan.at("/pour/bays")
        .forEach(bay -> ribbons.put(bay.get("id").asText(), bay.get("ribbons").size()));
    return ribbons;
  }

  /** Bags by room. */
  private static Map<String, Integer> rooms(JsonNode plan) {
    Map<String, Integer> rooms = new TreeMap<>();
    plan.at("/quantities/rooms")
        .forEach(room -> rooms.put(room.get("room").asText(), room.get("bags").intValue()));
    return rooms;
  }

  private static List<String> codes(JsonNode findings) {
    return Trees.elements(findings).stream().map(f -> f.get("code").asText()).sorted().toList();
  }

  private static double number(JsonNode plan, String place) {
    JsonNode number = plan.at(place);
    assertTrue(number.isNumber(), place);
    return number.doubleValue();
  }

  private static JsonNode plan(ObjectNode request) {
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
