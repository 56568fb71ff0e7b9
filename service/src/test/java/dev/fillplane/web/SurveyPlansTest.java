package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Surveys planned through the front door. */
class SurveyPlansTest {

  private static final String PATH = "/v1/survey-plans";

  // --- what is planned

  @Test
  void openingsAndCornersOfARectangleAreRead() {
    JsonNode plan = plan(room(6, 4));
    List<JsonNode> points = Trees.elements(plan.get("points"));
    assertTrue(
        points.stream()
            .anyMatch(
                p -> near(p, new double[] {3, 0.15}) && p.get("why").asText().equals("doorway")),
        plan.toString());
    for (double[] corner : new double[][] {{0.3, 0.3}, {5.7, 0.3}, {5.7, 3.7}, {0.3, 3.7}}) {
      assertTrue(
          points.stream().anyMatch(p -> near(p, corner) && p.get("why").asText().equals("corner")),
          plan.toString());
    }
    assertTrue(points.stream().anyMatch(p -> p.get("why").asText().equals("wall")));
    assertTrue(points.stream().anyMatch(p -> p.get("why").asText().equals("inside")));
    assertEquals(8, plan.get("readings").intValue(), "24 m2, one for 3 m2");
  }

  @Test
  void ordersCountFromOneAndTheWalkIsAsLongAsItsLegs() {
    JsonNode plan = plan(room(6, 4).set("wanted", Trees.of("{'readings':30}")));
    double length = 0;
    double x = 3;
    double y = 0;
    int order = 0;
    Set<String> places = new HashSet<>();
    for (JsonNode point : plan.get("points")) {
      assertEquals(++order, point.get("order").intValue());
      length += Math.hypot(point.get("x").doubleValue() - x, point.get("y").doubleValue() - y);
      x = point.get("x").doubleValue();
      y = point.get("y").doubleValue();
      places.add(x + " " + y);
    }
    assertEquals(30, order);
    assertEquals(30, places.size());
    assertEquals(length, plan.get("walk").doubleValue(), 1e-9);
    assertTrue(length < 35, "30 places 0.9 m apart in 24 m2: " + length);
  }

  @Test
  void moreReadingsLeaveLessOpen() {
    double before = Double.POSITIVE_INFINITY;
    for (int count : new int[] {6, 9, 15, 25, 40}) {
      ObjectNode request = room(6, 4);
      request.putObject("wanted").put("readings", count);
      JsonNode plan = plan(request);
      assertEquals(count, plan.get("readings").intValue());
      assertTrue(plan.get("spread").doubleValue() < before, "at " + count);
      before = plan.get("spread").doubleValue();
    }
  }

  @Test
  void readingsThatBagsAskForAreTheFewestThatDo() {
    ObjectNode request = room(12, 8);
    request.putObject("wanted").put("bags", 0.8);
    JsonNode plan = plan(request);
    assertTrue(plan.get("spread").doubleValue() <= 0.8);
    request.putObject("wanted").put("readings", plan.get("readings").intValue() - 1);
    assertTrue(plan(request).get("spread").doubleValue() > 0.8);
  }

  /** A 3 x 2 m island in the middle: nobody reads there. */
  @Test
  void islandsAreAvoided() {
    ObjectNode request = room(8, 6);
    ring(request, "[[2.5,2],[2.5,4],[5.5,4],[5.5,2],[2.5,2]]");
    request.putObject("wanted").put("readings", 40);
    for (JsonNode point : plan(request).get("points")) {
      double x = point.get("x").doubleValue();
      double y = point.get("y").doubleValue();
      assertTrue(x < 2.4 + 1e-9 || x > 5.6 - 1e-9 || y < 1.9 + 1e-9 || y > 4.1 - 1e-9, "" + point);
    }
  }

  @Test
  void walksFromTheExitThroughTheDoorways() {
    ObjectNode request = RunningService.example("survey-plan.json");
    List<String> rooms =
        Trees.elements(plan(request).get("points")).stream()
            .map(point -> point.get("room").asText())
            .distinct()
            .toList();
    assertEquals("passage", rooms.get(0));
    assertEquals(3, rooms.size());
    String walked =
        String.join(
            " ",
            Trees.elements(plan(request).get("points")).stream()
                .map(point -> point.get("room").asText())
                .toList());
    for (String room : rooms) {
      assertEquals(
          walked.lastIndexOf(room) - walked.indexOf(room),
          (walked.split(room, -1).length - 2) * (room.length() + 1),
          "each room in one go");
    }
  }

  @Test
  void usAnswerIsTheMetricOne() {
    ObjectNode us = RunningService.example("survey-plan-us.json");
    JsonNode plan = plan(us);
    assertEquals(16, plan.get("readings").intValue());
    assertEquals("[ft_i]", plan.at("/unitCodes/plan").asText());
    ObjectNode metric = us.deepCopy();
    metric.put("units", "metric");
    ((ObjectNode) metric.at("/rooms/0/outline"))
        .set(
            "coordinates",
            Trees.of("{'a':[[[0,0],[7.3152,0],[7.3152,4.572],[0,4.572],[0,0]]]}").get("a"));
    ((ObjectNode) metric.at("/rooms/0/openings/0"))
        .setAll(Trees.of("{'from':[3.048,0],'to':[3.9624,0]}"));
    ((ObjectNode) metric.at("/surface"))
        .set(
            "variogram",
            Trees.of("{'shape':'exponential','nugget':1.032256,'sill':6.4516,'range':2.4384}"));
    JsonNode same = plan(metric);
    assertEquals(same.get("spread").doubleValue(), plan.get("spread").doubleValue(), 1e-6);
    assertEquals(same.get("walk").doubleValue(), plan.get("walk").doubleValue() * 0.3048, 1e-6);
  }

  @Test
  void sameRequestIsTheSameToTheByte() {
    JsonNode request = RunningService.example("survey-plan.json");
    assertEquals(
        RunningService.post(PATH, request).asString(),
        RunningService.post(PATH, request).asString());
  }

  @Test
  void variogramOutsideItsRange() {
    ObjectNode request = room(6, 4);
    request.set(
        "surface",
        Trees.of("{'variogram':{'shape':'gaussian','nugget':1,'sill':4,'range':1e-300}}"));
    Response answer = RunningService.post(PATH, request);
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(List.of("#/surface/variogram/range"), answer.path("errors.pointer"));
  }

  // --- what is warned of

  @Test
  void warns() {
    ObjectNode none = room(6, 4);
    ((ObjectNode) none.at("/rooms/0")).remove("openings");
    warned(none, "walk-without-exit");
    warned(room(6, 4), "floor-assumed-usual");
    ObjectNode few = room(6, 4);
    few.putObject("wanted").put("readings", 3);
    warned(few, "edges-not-covered");
    ObjectNode full = room(2, 1);
    full.putObject("wanted").put("readings", 100);
    warned(full, "no-place-left");
    ObjectNode sure = room(40, 30);
    sure.putObject("wanted").put("bags", 0.01);
    warned(sure, "bags-not-reached");
    assertEquals(500, plan(sure).get("readings").intValue());
  }

  // --- what is refused

  @Test
  void refuses() {
    refused(Trees.of("{'units':'metric'}"), "missing", "#/rooms");
    refused(Trees.of("{'units':'metric','rooms':[]}"), "too-few", "#/rooms");
    refused(with("wanted", "{'bags':2,'readings':9}"), "bags-or-readings", "#/wanted");
    refused(with("wanted", "{}"), "bags-or-readings", "#/wanted");
    refused(with("wanted", "{'bags':0}"), "too-small", "#/wanted/bags");
    refused(with("wanted", "{'bags':-1}"), "too-small", "#/wanted/bags");
    refused(with("wanted", "{'bags':20000}"), "too-big", "#/wanted/bags");
    refused(with("wanted", "{'readings':2}"), "too-small", "#/wanted/readings");
    refused(with("wanted", "{'readings':501}"), "too-big", "#/wanted/readings");
    refused(with("wanted", "{'readings':9.5}"), "wrong-type", "#/wanted/readings");
    refused(with("wanted", "{'certainty':1}"), "unknown-property", "#/wanted/certainty");
    refused(room(6, 4).put("readingError", 0), "too-small", "#/readingError");
    refused(room(6, 4).put("readingError", 60), "out-of-range", "#/readingError");
    refused(room(6, 4).put("confidence", 0.5), "too-small", "#/confidence");
    refused(room(6, 4).put("confidence", 1), "too-big", "#/confidence");
    refused(with("material", "{'id':'no-such-sheet'}"), "unknown-material", "#/material/id");
    ObjectNode twice = room(6, 4);
    Trees.refill(twice.get("rooms"), List.of(twice.at("/rooms/0"), twice.at("/rooms/0")));
    refused(twice, "room-repeated", "#/rooms/1/id");
    refused(room(6, 4).set("survey", Trees.of("{}")), "unknown-property", "#/survey");
  }

  /** The field of a plan request that asks for more or fewer next readings. */
  @Test
  void nextReadingsOfAPlan() {
    ObjectNode sample = RunningService.sample();
    for (int count : new int[] {0, 1, 10}) {
      sample.putObject("surface").put("nextReadings", count);
      List<Object> next = RunningService.post("/v1/plans", sample).path("surface.nextReadings");
      assertEquals(count, next.size());
    }
    for (String bad : List.of("-1", "11", "1.5", "'two'")) {
      sample.set("surface", Trees.of("{'nextReadings':" + bad + "}"));
      Response answer = RunningService.post("/v1/plans", sample);
      assertEquals(422, answer.statusCode(), bad);
      assertEquals("#/surface/nextReadings", answer.path("errors[0].pointer"));
    }
  }

  private static JsonNode plan(JsonNode request) {
    Response answer = RunningService.post(PATH, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }

  private static void warned(ObjectNode request, String code) {
    List<String> codes = RunningService.post(PATH, request).path("warnings.code");
    assertTrue(codes.contains(code), codes.toString());
  }

  private static void refused(JsonNode request, String code, String pointer) {
    Response answer = RunningService.post(PATH, request);
    assertEquals(422, answer.statusCode(), answer.asString());
    List<Map<String, String>> errors = answer.path("errors");
    assertTrue(
        errors.stream()
            .anyMatch(e -> e.get("code").equals(code) && e.get("pointer").equals(pointer)),
        answer.asString());
  }

  private static ObjectNode with(String property, String value) {
    return room(6, 4).set(property, Trees.of(value));
  }

  /** A rectangle with an exit in the middle of its south wall. */
  private static ObjectNode room(double width, double height) {
    String ring = "[[0,0],[W,0],[W,H],[0,H],[0,0]]".replace("W", "" + width);
    return Trees.of(
        ("{'units':'metric','rooms':[{'id':'hall','outline':{'type':'Polygon','coordinates':["
                + ring.replace("H", "" + height)
                + "]},'openings':[{'id':'out','from':[A,0],'to':[B,0],'kind':'exit'}]}]}")
            .replace("A", "" + (width / 2 - 0.4))
            .replace("B", "" + (width / 2 + 0.4)));
  }

  private static void ring(ObjectNode request, String ring) {
    ((ArrayNode) request.at("/rooms/0/outline/coordinates"))
        .add(Trees.of("{'a':" + ring + "}").get("a"));
  }

  private static boolean near(JsonNode point, double[] place) {
    return Math.hypot(
            point.get("x").doubleValue() - place[0], point.get("y").doubleValue() - place[1])
        < 1e-6;
  }
}
