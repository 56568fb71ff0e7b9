package dev.fillplane.web;

import static dev.fillplane.web.Refusals.PLANS;
import static dev.fillplane.web.Refusals.problem;
import static dev.fillplane.web.Refusals.reading;
import static dev.fillplane.web.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is no request, or none of the contract: each gets its status, its code and its place. */
class DoorTest {

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
    try (Server full =
        Server.start(
            Settings.at("127.0.0.1", 0).withCapacity(Capacity.usual().withPlaces(1, -1)))) {
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
  void numberThatMeasuresNothing() {
    refused(
        sample -> reading(sample, 0).put("reading", 1e308),
        "number-too-large",
        "#/survey/setups/0/readings/0/reading");
    refused(
        sample -> ((ObjectNode) sample.at("/probes/0")).put("x", -1e17),
        "number-too-large",
        "#/probes/0/x");
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
}
