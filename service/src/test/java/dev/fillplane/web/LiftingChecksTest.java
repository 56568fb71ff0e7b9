package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lifting checks over HTTP. Published examples are of NIOSH Pub. 94-110 (1, 2, 5 from memory); the
 * manual rounds, so 0.4 lb and 0.1 of the index printed.
 */
class LiftingChecksTest {

  private static final String GOOD =
      "{'units':'us','mass':50,'origin':{'horizontal':12,'vertical':8,'asymmetry':30},"
          + "'destination':{'horizontal':12,'vertical':36,'asymmetry':30},"
          + "'liftsPerMinute':1,'hours':1,'coupling':'poor','control':true,"
          + "'circumstances':{'load':'full-bag','steps':1,'oneHand':false,'kneeling':false,"
          + "'tightSpace':false,'slippery':false,'air':70,'humidity':0.4}}";

  @ParameterizedTest
  @CsvSource({
    "44, 23, 15,  0, 23, 64,  0, 0.1, fair, 16.3, 2.7, 14.5, 3.0",
    "35, 20, 27,  0, 20, 10,  0, 0.1, poor, 20.9, 1.7, 18.1, 1.9",
    "20, 20, 44, 30, 20,  7, 30, 5,   good, 14.4, 1.4, 13.3, 1.5"
  })
  void publishedExamples(
      double mass,
      double h1,
      double v1,
      double a1,
      double h2,
      double v2,
      double a2,
      double rate,
      String coupling,
      double mass1,
      double index1,
      double mass2,
      double index2) {
    ObjectNode request = request();
    request.put("mass", mass).put("liftsPerMinute", rate).put("coupling", coupling);
    hands(request, "origin", h1, v1, a1);
    hands(request, "destination", h2, v2, a2);
    Response answer = answered(request);
    assertEquals(mass1, answer.jsonPath().getDouble("origin.recommendedMass"), 0.4);
    assertEquals(mass2, answer.jsonPath().getDouble("destination.recommendedMass"), 0.4);
    assertEquals(index1, printed(answer, "origin.index"), 0.1 + 1e-9);
    assertEquals(index2, printed(answer, "destination.index"), 0.1 + 1e-9);
  }

  /** Derived: 50 lb one a minute; 24.0 lb and 2.08, straight from a stand 34.3 lb and 1.46. */
  @Test
  void aBagAndWhatWouldEaseIt() {
    Response answer = answered(request());
    assertEquals(24.0, answer.jsonPath().getDouble("origin.recommendedMass"), 0.05);
    assertEquals(2.08, answer.jsonPath().getDouble("index"), 0.005);
    assertEquals(true, answer.path("applies"));
    assertEquals(List.of("lifting-index-over-goal"), answer.path("warnings.code"));
    List<Map<String, Object>> ways = answer.path("alternatives");
    assertEquals(
        List.of("smaller-bag", "stand-and-turn", "two-people", "stand"),
        ways.stream().map(way -> way.get("way")).toList());
    assertEquals(25.0, number(ways.get(0), "mass"), 1e-9);
    assertEquals(2.0, number(ways.get(0), "liftsPerMinute"), 1e-9);
    assertEquals(2.084 / 2 * 0.94 / 0.91, number(ways.get(0), "index"), 0.005);
    assertEquals(1.456, number(ways.get(1), "index"), 0.005);
    assertEquals(2.084 * 0.75, number(ways.get(2), "index"), 0.005);
  }

  /** The equation is worked in inches and pounds, whatever the caller's units. */
  @Test
  void metricIsTheSameLift() {
    ObjectNode request = request();
    request.put("units", "metric").put("mass", 50 * 0.45359237);
    hands(request, "origin", 12 * 25.4, 8 * 25.4, 30);
    hands(request, "destination", 12 * 25.4, 36 * 25.4, 30);
    ((ObjectNode) request.get("circumstances")).put("air", 21);
    Response metric = answered(request);
    Response us = answered(request());
    assertEquals(us.jsonPath().getDouble("index"), metric.jsonPath().getDouble("index"), 1e-5);
    assertEquals(
        us.jsonPath().getDouble("origin.recommendedMass") * 0.45359237,
        metric.jsonPath().getDouble("origin.recommendedMass"),
        1e-5);
  }

  @ParameterizedTest
  @CsvSource({
    "load, 'bucket', lift-of-a-moving-load",
    "load, 'part-bag', lift-of-a-moving-load",
    "steps, 3, lift-and-carry",
    "oneHand, true, lift-with-one-hand",
    "kneeling, true, lift-on-the-knees",
    "tightSpace, true, lift-in-tight-space",
    "slippery, true, lift-on-slippery-floor",
    "air, 65.9, lift-in-cold-or-heat",
    "air, 79.1, lift-in-cold-or-heat",
    "humidity, 0.34, lift-in-dry-or-moist-air",
    "humidity, 0.51, lift-in-dry-or-moist-air"
  })
  void saysWhereTheEquationDoesNotHold(String name, String value, String code) {
    ObjectNode request = request();
    ((ObjectNode) request.get("circumstances")).set(name, value(value));
    Response answer = answered(request);
    assertEquals(false, answer.path("applies"));
    assertEquals(List.of(code), answer.path("whyNot.code"));
  }

  @ParameterizedTest
  @CsvSource({"steps, 2", "air, 66", "air, 79", "humidity, 0.35", "humidity, 0.5"})
  void holdsAtTheEnds(String name, String value) {
    ObjectNode request = request();
    ((ObjectNode) request.get("circumstances")).set(name, value(value));
    assertEquals(true, answered(request).path("applies"));
  }

  @Test
  void aDayOfWorkIsCovered() {
    assertEquals(true, answered(request().put("hours", 8)).path("applies"));
  }

  @Test
  void longerThanADayOfWorkIsNotCovered() {
    Response answer = answered(request().put("hours", 8.5));
    assertEquals(List.of("lift-over-eight-hours"), answer.path("whyNot.code"));
    assertEquals(0.75, answer.jsonPath().getDouble("origin.multipliers.frequency"), 1e-9);
  }

  @Test
  void namesWhatWasNotTold() {
    ObjectNode request = request();
    request.remove("circumstances");
    Response answer = answered(request);
    assertTrue(answer.<List<String>>path("warnings.code").contains("lift-not-told"));
    assertTrue(answer.asString().contains("kind of load, steps, one or two hands"));
  }

  @Test
  void outOfReachHasNoIndex() {
    ObjectNode request = request();
    hands(request, "origin", 26, 30, 0);
    Response answer = answered(request);
    assertEquals(0, answer.jsonPath().getDouble("origin.recommendedMass"));
    assertNull(answer.path("index"));
    assertTrue(answer.<List<String>>path("warnings.code").contains("lift-out-of-bounds"));
    assertEquals(List.of(), answer.path("alternatives"));
  }

  @Test
  void highRisk() {
    List<String> codes = answered(request().put("mass", 80)).path("warnings.code");
    assertEquals(List.of("lifting-index-high"), codes);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mass | 0 | too-small | #/mass",
        "mass | 2000 | out-of-range | #/mass",
        "liftsPerMinute | -1 | too-small | #/liftsPerMinute",
        "liftsPerMinute | 61 | too-big | #/liftsPerMinute",
        "hours | 0 | too-small | #/hours",
        "hours | 25 | too-big | #/hours",
        "coupling | handles | not-one-of | #/coupling",
        "control | 1 | wrong-type | #/control",
        "weight | 50 | unknown-property | #/weight",
        "origin | {\"vertical\":8} | missing | #/origin/horizontal",
        "origin | {\"horizontal\":-1,\"vertical\":8} | too-small | #/origin/horizontal",
        "origin | {\"horizontal\":12,\"vertical\":300} | out-of-range | #/origin/vertical",
        "origin | {\"horizontal\":200,\"vertical\":8} | out-of-range | #/origin/horizontal",
        "circumstances | {\"humidity\":45} | too-big | #/circumstances/humidity",
        "circumstances | {\"air\":900} | out-of-range | #/circumstances/air",
        "circumstances | {\"load\":\"sack\"} | not-one-of | #/circumstances/load"
      })
  void refuses(String name, String value, String code, String pointer) {
    ObjectNode request = request();
    request.set(name, value(value));
    Response answer = RunningService.post("/v1/lifting-checks", request.toString());
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(List.of(code), answer.path("errors.code"));
    assertEquals(List.of(pointer), answer.path("errors.pointer"));
  }

  private static ObjectNode request() {
    return (ObjectNode) Refusals.tree(GOOD);
  }

  private static void hands(ObjectNode request, String end, double h, double v, double a) {
    request.putObject(end).put("horizontal", h).put("vertical", v).put("asymmetry", a);
  }

  /** A JSON value; a word that is none stands for itself. */
  private static JsonNode value(String text) {
    return text.matches("[a-z-]+") && !text.equals("true")
        ? Refusals.tree("'" + text + "'")
        : Refusals.tree(text);
  }

  private static double printed(Response answer, String path) {
    return Math.round(answer.jsonPath().getDouble(path) * 10) / 10.0;
  }

  private static double number(Map<String, Object> row, String name) {
    return ((Number) row.get(name)).doubleValue();
  }

  private static Response answered(ObjectNode request) {
    Response answer = RunningService.post("/v1/lifting-checks", request.toString());
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
