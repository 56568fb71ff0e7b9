package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Bad input through the front door: each gets its status, its code and its place. */
class BadInputTest {

  private static final String PLANS = "/v1/plans";

  // --- not even a request

  @Test
  void notJson() {
    problem(RunningService.post(PLANS, "{'units"), 400, "not-json");
    problem(RunningService.post(PLANS, ""), 400, "not-json");
    problem(RunningService.post(PLANS, "{} {}"), 400, "not-json");
  }

  @Test
  void notANumberIsNotJson() {
    problem(RunningService.post(PLANS, "{\"confidence\": NaN}"), 400, "not-json");
  }

  @Test
  void propertyToldTwice() {
    Response answer = RunningService.post(PLANS, "{\"units\":\"metric\",\"units\":\"us\"}");
    problem(answer, 400, "not-json");
    assertEquals("A property is told twice at line 1, column 26.", answer.path("detail"));
  }

  @Test
  void nestedTooDeep() {
    problem(RunningService.post(PLANS, "[".repeat(100) + "]".repeat(100)), 400, "not-json");
  }

  @Test
  void nameTooLong() {
    problem(RunningService.post(PLANS, "{\"" + "n".repeat(200) + "\":1}"), 400, "not-json");
  }

  @Test
  void wrongMediaType() {
    problem(
        RunningService.given().contentType("text/plain").body("{}").post(PLANS),
        415,
        "unsupported-media-type");
    problem(
        RunningService.given()
            .contentType("application/json")
            .header("Content-Encoding", "gzip")
            .body("{}")
            .post(PLANS),
        415,
        "unsupported-media-type");
  }

  @Test
  void mediaTypeThatIsNotOffered() {
    problem(
        RunningService.given()
            .contentType("application/json")
            .accept("image/png")
            .body("{}")
            .post(PLANS),
        406,
        "not-acceptable");
  }

  @Test
  void unknownPath() {
    problem(RunningService.given().get("/v1/plains"), 404, "not-found");
  }

  @Test
  void wrongMethod() {
    Response answer = RunningService.given().get(PLANS);
    problem(answer, 405, "method-not-allowed");
    assertEquals("POST", answer.header("Allow"));
    Response other = RunningService.given().delete("/v1/materials");
    problem(other, 405, "method-not-allowed");
    assertTrue(other.header("Allow").contains("GET"), other.header("Allow"));
  }

  @Test
  void bodyOverTheLimit() {
    try (Server small = Server.start(Settings.at("127.0.0.1", 0).withBodyBytes(1_000))) {
      problem(
          RunningService.to(small)
              .contentType("application/json")
              .body(RunningService.sample().toString())
              .post(PLANS),
          413,
          "too-large");
    }
  }

  @Test
  void tooManyRequests() {
    try (Server slow = Server.start(Settings.at("127.0.0.1", 0).withRequestsPerMinute(2))) {
      RunningService.to(slow).get("/v1/methods");
      RunningService.to(slow).get("/v1/methods");
      Response third = RunningService.to(slow).get("/v1/methods");
      problem(third, 429, "too-many-requests");
      assertEquals("60", third.header("Retry-After"));
    }
  }

  @Test
  void noPlaceForACalculation() {
    try (Server full = Server.start(Settings.at("127.0.0.1", 0).withPlaces(0, 0))) {
      Response answer =
          RunningService.to(full)
              .contentType("application/json")
              .body(RunningService.sample().toString())
              .post(PLANS);
      problem(answer, 503, "busy");
      assertEquals("2", answer.header("Retry-After"));
    }
  }

  // --- against the contract

  @Test
  void numberTooLarge() {
    refused(
        sample -> reading(sample, 0).put("reading", 1e300 * 1e300),
        "1e999",
        422,
        "number-too-large",
        "#/survey/setups/0/readings/0/reading");
  }

  @Test
  void textForANumber() {
    refused(
        sample -> reading(sample, 4).put("x", "1.5"),
        "wrong-type",
        "#/survey/setups/0/readings/4/x");
  }

  @Test
  void unknownProperty() {
    refused(sample -> sample.put("colour", "blue"), "unknown-property", "#/colour");
    refused(
        sample -> ((ObjectNode) sample.get("crew")).put("dog", 1),
        "unknown-property",
        "#/crew/dog");
  }

  @Test
  void missingProperty() {
    refused(sample -> sample.remove("rooms"), "missing", "#/rooms");
    refused(sample -> sample.remove("units"), "missing", "#/units");
  }

  @Test
  void unknownWord() {
    refused(sample -> sample.put("covering", "lava"), "not-one-of", "#/covering");
    refused(sample -> sample.put("units", "imperial"), "not-one-of", "#/units");
  }

  @Test
  void everyFaultAtOnce() {
    ObjectNode sample = RunningService.sample();
    sample.put("colour", "blue");
    sample.put("confidence", 2);
    sample.remove("survey");
    Response answer = RunningService.post(PLANS, sample);
    List<String> pointers = answer.path("errors.pointer");
    assertEquals(
        List.of("#/colour", "#/confidence", "#/survey"), pointers.stream().sorted().toList());
  }

  @Test
  void onlyTheFirstHundredFaultsAreShown() {
    ObjectNode sample = RunningService.sample();
    for (int i = 0; i < 130; i++) {
      sample.put("p" + i, i);
    }
    Response answer = RunningService.post(PLANS, sample);
    List<Object> errors = answer.path("errors");
    assertEquals(100, errors.size());
    assertEquals(30, (Integer) answer.path("more"));
  }

  // --- against sense: rooms

  @Test
  void crossingOutline() {
    refused(
        sample -> outline(sample, 0, "[[0,0],[4,4],[4,0],[0,4],[0,0]]"),
        "outline-crosses-itself",
        "#/rooms/0/outline/coordinates/0");
  }

  @Test
  void holeOutside() {
    refused(
        sample ->
            outline(sample, 0, "[[0,0],[4,0],[4,4],[0,4],[0,0]]", "[[9,9],[10,9],[10,10],[9,9]]"),
        "island-outside",
        "#/rooms/0/outline/coordinates/1");
  }

  @Test
  void roomOfNoArea() {
    refused(
        sample -> outline(sample, 0, "[[0,0],[4,0],[8,0],[0,0]]"),
        "outline-too-small",
        "#/rooms/0/outline/coordinates/0");
  }

  @Test
  void roomsThatOverlap() {
    refused(
        sample -> {
          ObjectNode twin = sample.withArray("rooms").get(0).deepCopy();
          twin.put("id", "twin");
          sample.withArray("rooms").add(twin);
        },
        "rooms-overlap",
        null);
  }

  // --- against sense: survey

  @Test
  void noReadingAtAll() {
    refused(sample -> sample.set("survey", tree("{'setups':[]}")), "too-few", "#/survey/setups");
    refused(sample -> sample.set("survey", tree("{}")), "no-readings", "#/survey");
  }

  @Test
  void oneAndTwoReadings() {
    refused(sample -> survey(sample, "a 1 1 1200"), "too-few-readings", "#/survey");
    refused(sample -> survey(sample, "a 1 1 1200", "b 2 1 1201"), "too-few-readings", "#/survey");
  }

  @Test
  void readingsOnALine() {
    refused(
        sample -> survey(sample, "a 1 1 1200", "b 2 1 1201", "c 3 1 1202", "d 4 1 1203"),
        "readings-on-a-line",
        "#/survey");
  }

  @Test
  void noReadingInAnyRoom() {
    refused(
        sample -> survey(sample, "a 91 1 1200", "b 92 1 1201", "c 93 2 1202"),
        "no-reading-in-a-room",
        "#/survey");
  }

  @Test
  void duplicatesThatDisagree() {
    ObjectNode sample = RunningService.sample();
    ObjectNode twin = reading(sample, 3).deepCopy();
    twin.put("reading", twin.get("reading").doubleValue() + 25);
    ((ArrayNode) sample.at("/survey/setups/0/readings")).add(twin);
    warned(sample, "laser-moved");
  }

  @Test
  void unknownBenchmark() {
    refused(
        sample ->
            ((ArrayNode) sample.at("/survey/benchmarks"))
                .add(tree("{'point':'nowhere','elevation':0}")),
        "unknown-benchmark",
        "#/survey/benchmarks/1/point");
  }

  @Test
  void setupsThatShareNoPoint() {
    refused(
        sample ->
            ((ArrayNode) sample.at("/survey/setups"))
                .add(tree("{'id':'lost','readings':[{'point':'q1','x':1,'y':1,'reading':1000}]}")),
        "setups-not-connected",
        null);
  }

  @Test
  void pointNobodyKnowsIsIgnored() {
    ObjectNode sample = RunningService.sample();
    ((ObjectNode) sample.get("survey")).set("ignore", tree("['nobody']"));
    warned(sample, null);
  }

  // --- against sense: target and material

  @Test
  void minimumDepthAboveACeiling() {
    refused(
        sample ->
            sample.set(
                "target",
                tree("{'minimumDepth':3,'ceiling':[{'x':1,'y':1,'elevation':-500,'of':'pour'}]}")),
        "ceiling-below-minimum",
        "#/target/ceiling/0");
  }

  @Test
  void ceilingOfTheFinishWithoutItsThickness() {
    refused(
        sample -> {
          sample.remove("coveringThickness");
          sample.set("target", tree("{'ceiling':[{'x':1,'y':1,'elevation':500,'of':'finish'}]}"));
        },
        "covering-thickness-needed",
        null);
  }

  @Test
  void sheetThatContradictsItself() {
    refused(
        sample ->
            sample.set(
                "material",
                tree(
                    "{'bagMass':25,'waterPerBag':5,'yieldPerBag':11,'wetDensity':2000,"
                        + "'minimumLift':3,'maximumLift':30}")),
        "sheet-yield-contradicts-density",
        null);
  }

  @Test
  void waterOutsideTheSheet() {
    refused(
        sample ->
            sample.set(
                "material",
                tree(
                    "{'bagMass':25,'waterPerBag':7,'wetDensity':2000,"
                        + "'waterRange':{'from':4.75,'to':5.25}}")),
        "water-outside-sheet",
        "#/material/waterPerBag");
  }

  @Test
  void quantityOutsideItsRange() {
    refused(
        sample -> ((ObjectNode) sample.get("conditions")).put("air", 900),
        "out-of-range",
        "#/conditions/air");
  }

  @Test
  void gridTooFine() {
    refused(sample -> sample.set("grid", tree("{'cell':0.01}")), "grid-too-fine", "#/grid/cell");
  }

  @Test
  void noAnswerNamesAClass() {
    for (String body :
        List.of("{", "[]", "3", "null", "\"x\"", "{\"units\":[]}", "{\"survey\":{\"setups\":3}}")) {
      String text = RunningService.post(PLANS, body).asString();
      for (String inner : List.of("java.", "dev.fillplane", "jackson", "Exception", "\tat ")) {
        assertFalse(text.contains(inner), text);
      }
    }
  }

  // --- how

  private static void refused(Consumer<ObjectNode> change, String code, String pointer) {
    refused(change, null, 422, code, pointer);
  }

  /** Changes the sample, posts it, and looks for the code at the place; null stands for any. */
  private static void refused(
      Consumer<ObjectNode> change, String infinity, int status, String code, String pointer) {
    ObjectNode sample = RunningService.sample();
    change.accept(sample);
    String body = sample.toString();
    if (infinity != null) {
      body = body.replace("\"Infinity\"", infinity);
    }
    Response answer = RunningService.post(PLANS, body);
    assertEquals(status, answer.statusCode(), answer.asString());
    assertEquals("application/problem+json", answer.contentType());
    List<Map<String, String>> errors = answer.path("errors");
    assertTrue(
        errors.stream()
            .anyMatch(
                error ->
                    (code == null || code.equals(error.get("code")))
                        && (pointer == null || pointer.equals(error.get("pointer")))),
        answer.asString());
  }

  private static void warned(ObjectNode request, String code) {
    Response answer = RunningService.post(PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    List<String> codes = answer.path("warnings.code");
    assertTrue(code == null ? !codes.isEmpty() : codes.contains(code), codes.toString());
  }

  private static void problem(Response answer, int status, String kind) {
    assertEquals(status, answer.statusCode(), answer.asString());
    assertEquals("application/problem+json", answer.contentType());
    assertEquals("urn:fillplane:problem:" + kind, answer.path("type"));
    assertEquals(status, (Integer) answer.path("status"));
    assertEquals(answer.header("X-Request-Id"), answer.path("requestId"));
  }

  private static ObjectNode reading(ObjectNode sample, int index) {
    return (ObjectNode) sample.at("/survey/setups/0/readings/" + index);
  }

  private static void outline(ObjectNode sample, int room, String... rings) {
    ((ObjectNode) sample.at("/rooms/" + room + "/outline"))
        .set("coordinates", tree("[" + String.join(",", rings) + "]"));
  }

  /** A survey of one setup; each reading is told as {@code name x y reading}. */
  private static void survey(ObjectNode sample, String... readings) {
    ObjectNode survey = (ObjectNode) tree("{'setups':[{'id':'S','readings':[]}]}");
    ArrayNode list = (ArrayNode) survey.at("/setups/0/readings");
    for (String reading : readings) {
      String[] parts = reading.split(" ");
      list.addObject()
          .put("point", parts[0])
          .put("x", Double.parseDouble(parts[1]))
          .put("y", Double.parseDouble(parts[2]))
          .put("reading", Double.parseDouble(parts[3]));
    }
    sample.set("survey", survey);
  }

  private static JsonNode tree(String text) {
    try {
      return dev.fillplane.web.json.Json.tree(
          text.replace('\'', '"').getBytes(java.nio.charset.StandardCharsets.UTF_8));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
