package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.json.Json;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Sends requests that are to be refused, made from the sample by a change. */
final class Refusals {

  static final String PLANS = "/v1/plans";

  private Refusals() {}

  static void refused(Consumer<ObjectNode> change, String code, String pointer) {
    refused(change, null, 422, code, pointer);
  }

  /** Changes the sample, posts it, and looks for the code at the place; null stands for any. */
  static void refused(
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

  static void warned(ObjectNode request, String code) {
    Response answer = RunningService.post(PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    List<String> codes = answer.path("warnings.code");
    assertTrue(code == null ? !codes.isEmpty() : codes.contains(code), codes.toString());
  }

  static void problem(Response answer, int status, String kind) {
    assertEquals(status, answer.statusCode(), answer.asString());
    assertEquals("application/problem+json", answer.contentType());
    assertEquals("urn:fillplane:problem:" + kind, answer.path("type"));
    assertEquals(status, (Integer) answer.path("status"));
    assertEquals(answer.header("X-Request-Id"), answer.path("requestId"));
  }

  static ObjectNode reading(ObjectNode sample, int index) {
    return (ObjectNode) sample.at("/survey/setups/0/readings/" + index);
  }

  static void outline(ObjectNode sample, int room, String... rings) {
    ((ObjectNode) sample.at("/rooms/" + room + "/outline"))
        .set("coordinates", tree("[" + String.join(",", rings) + "]"));
  }

  /** A survey of one setup; each reading is told as {@code name x y reading}. */
  static void survey(ObjectNode sample, String... readings) {
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

  static JsonNode tree(String text) {
    try {
      return Json.tree(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
