package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What every answer has, whatever was asked. */
class MediaTest {

  private static final String ID = "X-Request-Id";

  @Test
  void everyAnswerHasAnId() {
    List<Response> answers =
        List.of(
            RunningService.given().get("/health/live"),
            RunningService.given().get("/v1/materials"),
            RunningService.given().get("/openapi.yaml"),
            RunningService.post("/v1/plans", RunningService.sample()),
            RunningService.post("/v1/depth-maps", RunningService.sample()),
            RunningService.post("/v1/plans", "{}"),
            RunningService.given().get("/nowhere"),
            RunningService.given().delete("/v1/plans"));
    List<String> ids = new ArrayList<>();
    for (Response answer : answers) {
      assertEquals(4, UUID.fromString(answer.header(ID)).version());
      ids.add(answer.header(ID));
    }
    assertEquals(answers.size(), ids.stream().distinct().count());
  }

  @Test
  void unknownCharsetsOfABodyDoNotFail() {
    Response answer =
        RunningService.given()
            .header("Content-Type", "application/json; charset=utf-8x")
            .body("{}".getBytes(StandardCharsets.UTF_8))
            .post("/v1/plans");
    assertEquals(422, answer.statusCode(), answer.asString());
  }

  @Test
  void callersPlainIdIsKept() {
    Response answer = RunningService.given().header(ID, "site-7_a.2").get("/v1/nowhere");
    assertEquals("site-7_a.2", answer.header(ID));
    assertEquals("site-7_a.2", answer.path("requestId"));
  }

  @Test
  void otherIdsAreReplaced() {
    for (String id : List.of("two words", "<b>", "x".repeat(65))) {
      assertNotEquals(id, RunningService.given().header(ID, id).get("/health/live").header(ID));
    }
  }

  @Test
  void mediaTypes() {
    assertEquals("application/json", RunningService.given().get("/v1/methods").contentType());
    assertEquals("application/yaml", RunningService.given().get("/openapi.yaml").contentType());
    assertEquals(
        "image/svg+xml",
        RunningService.post("/v1/depth-maps", RunningService.sample()).contentType());
  }

  @Test
  void acceptedByWildcardOrByName() {
    for (String accept :
        List.of("*/*", "application/*", "text/html, application/json;q=0.5", "APPLICATION/JSON")) {
      Response answer = RunningService.given().header("Accept", accept).get("/v1/methods");
      assertEquals(200, answer.statusCode(), accept);
    }
    for (String accept : List.of("text/html", "application/json;q=0")) {
      Response answer = RunningService.given().header("Accept", accept).get("/v1/methods");
      assertEquals(406, answer.statusCode(), accept);
    }
  }

  @Test
  void headAndOptionsDoNotFail() {
    for (String path : List.of("/v1/plans", "/v1/materials", "/health/live", "/nowhere")) {
      for (Response answer :
          List.of(RunningService.open().head(path), RunningService.open().options(path))) {
        assertTrue(answer.statusCode() < 500, path + " " + answer.statusCode());
        assertTrue(answer.header(ID) != null, path);
      }
    }
  }

  @Test
  void cataloguesInBothUnits() {
    for (String path : List.of("/v1/materials", "/v1/substrates", "/v1/coverings")) {
      assertEquals("metric", RunningService.given().get(path).path("units"));
      assertEquals("us", RunningService.given().queryParam("units", "us").get(path).path("units"));
    }
    assertEquals(25.0, bagMass("metric"), 1e-9);
    assertEquals(25.0 / 0.45359237, bagMass("us"), 1e-9);
  }

  private static double bagMass(String units) {
    JsonNode items =
        Trees.of(RunningService.given().queryParam("units", units).get("/v1/materials"))
            .get("items");
    return Trees.elements(items).stream()
        .filter(item -> item.get("id").asText().equals("cement-standard-25"))
        .findFirst()
        .orElseThrow()
        .get("bagMass")
        .doubleValue();
  }

  @Test
  void unknownUnitsOfACatalogue() {
    for (String path : List.of("/v1/materials", "/v1/substrates", "/v1/coverings")) {
      Response answer = RunningService.given().queryParam("units", "imperial").get(path);
      assertEquals(400, answer.statusCode());
      assertEquals("application/problem+json", answer.contentType());
      assertEquals("urn:fillplane:problem:bad-request", answer.path("type"));
    }
  }

  @Test
  void contractIsServedAsItIs() {
    String served = RunningService.given().get("/openapi.yaml").asString();
    assertEquals(RunningService.CONTRACT.yaml(), served);
  }

  @Test
  void validationTellsUnitsOnlyWhereTheRequestDoes() {
    Response us = RunningService.post("/v1/plan-validations", Trees.of("{'units':'us'}"));
    assertEquals("us", us.path("units"));
    Response silent = RunningService.post("/v1/plan-validations", "{}");
    assertEquals(200, silent.statusCode());
    assertEquals(null, silent.<String>path("units"));
    assertEquals(false, silent.path("valid"));
  }
}
