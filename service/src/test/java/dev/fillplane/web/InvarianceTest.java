package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
  private static final double EXACT = 1e-9;

  /** Where the cells lie differently on the floor; of volumes and mean depths. */
  private static final double CELLS = 1e-3;

  /** Where the cells lie differently: what the floor can fall within one of them, in mm. */
  private static final double WITHIN_A_CELL = 0.5;

  /** Metric grid depths are rounded to 0.01 mm, the others to 0.001 in. */
  private static final double GRID_ROUNDING = 0.005 + 0.0005 * 25.4;

  // --- units

  @Test
  void unitsDoNotMatter() {
    JsonNode metric = bare(plan(RunningService.sample()));
    JsonNode us = plan(RunningService.example("sample-us.json"));
    Differences.none(metric, Metric.of("Plan", bare(us)), EXACT, 600);
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
      assertEquals(metric.get(name).doubleValue(), us.get(name).doubleValue(), EXACT, name);
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
    for (JsonNode note : bare.get("safety")) {
      if (note.get("code").asText().equals("bag-lifting")) {
        ((ObjectNode) note).removeAll();
      }
    }
    for (String list : List.of("/safety", "/warnings", "/pour/reasons", "/pour/changes")) {
      bare.at(list).forEach(said -> ((ObjectNode) said).remove(List.of("text", "detail")));
    }
    return bare;
  }

  // --- place on plan

  @Test
  void shiftedPlan() {
    ObjectNode shifted = RunningService.sample();
    move(shifted, (x, y) -> new double[] {x + 1000.5, y - 2000.25});
    same(plan(RunningService.sample()), plan(shifted), 1e-8, 1e-6);
  }

  @Test
  void turnedPlan() {
    double angle = Math.toRadians(37);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    ObjectNode turned = RunningService.sample();
    move(turned, (x, y) -> new double[] {c * x - s * y, s * x + c * y});
    same(plan(RunningService.sample()), plan(turned), CELLS, WITHIN_A_CELL);
  }

  /** A new place for a point on plan. */
  private interface Move {
    double[] of(double x, double y);
  }

  private static void move(ObjectNode request, Move move) {
    for (JsonNode room : request.get("rooms")) {
      room.at("/outline/coordinates").forEach(ring -> ring.forEach(p -> position(p, move)));
      for (JsonNode opening : room.path("openings")) {
        position(opening.get("from"), move);
        position(opening.get("to"), move);
      }
    }
    request.at("/survey/setups").forEach(s -> s.get("readings").forEach(r -> point(r, move)));
    request.get("probes").forEach(probe -> point(probe, move));
  }

  private static void position(JsonNode position, Move move) {
    double[] to = move.of(position.get(0).doubleValue(), position.get(1).doubleValue());
    ((ArrayNode) position).removeAll().add(to[0]).add(to[1]);
  }

  private static void point(JsonNode point, Move move) {
    if (point.has("x")) {
      double[] to = move.of(point.get("x").doubleValue(), point.get("y").doubleValue());
      ((ObjectNode) point).put("x", to[0]).put("y", to[1]);
    }
  }

  // --- order and names

  @Test
  void orderOfReadings() {
    ObjectNode shuffled = RunningService.sample();
    for (JsonNode setup : shuffled.at("/survey/setups")) {
      shuffle(setup.get("readings"));
    }
    same(plan(RunningService.sample()), plan(shuffled), EXACT, EXACT);
  }

  @Test
  void orderOfSetups() {
    ObjectNode turned = RunningService.sample();
    List<JsonNode> setups = Trees.elements(turned.at("/survey/setups"));
    Collections.reverse(setups);
    Trees.refill(turned.at("/survey/setups"), setups);
    same(plan(RunningService.sample()), plan(turned), EXACT, EXACT);
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
      same(plan(RunningService.sample()), plan(shuffled), EXACT, EXACT);
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
    same(plan(RunningService.sample()), plan(renamed), EXACT, EXACT);
  }

  private static void shuffle(JsonNode array) {
    List<JsonNode> elements = Trees.elements(array);
    Collections.shuffle(elements, new Random(8));
    Trees.refill(array, elements);
  }

  // --- how

  /** Volumes may differ by {@code relative}, heights in mm by {@code height}. */
  private static void same(JsonNode expected, JsonNode actual, double relative, double height) {
    for (String place :
        List.of(
            "/depth/area",
            "/depth/pouredArea",
            "/depth/volume",
            "/depth/mean",
            "/depth/volumeOdds/p10",
            "/depth/volumeOdds/p50",
            "/depth/volumeOdds/p90",
            "/quantities/perimeterSeal",
            "/mix/workingTime",
            "/surface/variogram/sill",
            "/surface/variogram/range",
            "/surface/crossValidation/rmse")) {
      double value = number(expected, place);
      assertEquals(value, number(actual, place), relative * Math.abs(value), place);
    }
    for (String place : List.of("/target/elevation", "/depth/maximum", "/depth/minimum")) {
      assertEquals(number(expected, place), number(actual, place), height, place);
    }
    for (int i = 0; i < expected.at("/depth/probes").size(); i++) {
      String place = "/depth/probes/" + i + "/elevation";
      assertEquals(number(expected, place), number(actual, place), relative * 10, place);
    }
    assertEquals(number(expected, "/target/bareOdds"), number(actual, "/target/bareOdds"), 0.02);
    sameWords(expected, actual, relative <= 1e-6);
  }

  private static void sameWords(JsonNode expected, JsonNode actual, boolean exactly) {
    assertEquals(expected.at("/pour/verdict"), actual.at("/pour/verdict"));
    assertEquals(
        expected.at("/flatness/before/verdict"), actual.at("/flatness/before/verdict"));
    assertEquals(rooms(expected).keySet(), rooms(actual).keySet());
    int pins = expected.get("pins").size();
    assertTrue(pins > 0);
    if (exactly) {
      assertEquals(expected.at("/quantities/bags"), actual.at("/quantities/bags"));
      assertEquals(rooms(expected), rooms(actual));
      assertEquals(pins, actual.get("pins").size());
      assertEquals(codes(expected.get("warnings")), codes(actual.get("warnings")));
    } else {
      int order = expected.at("/quantities/bags/order").intValue();
      assertEquals(order, actual.at("/quantities/bags/order").intValue(), 1);
    }
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
