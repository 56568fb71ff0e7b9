package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Streams of the running service: what each line is answered with. */
@Timeout(300)
class PlanStreamsTest {

  private static final String RECTANGLE = RunningService.example("rectangle.json").toString();
  private static final int MEGABYTE = 1_000_000;

  /** The sender is a thread of its own: neither end holds all lines, so both must go on at once. */
  @Test
  void streamedUnitsAreSinglePlans() throws Exception {
    List<ObjectNode> units = InventedUnits.make(200, 7);
    try (StreamCall call = call()) {
      CompletableFuture<Void> sent = CompletableFuture.runAsync(() -> send(units, call));
      for (ObjectNode unit : units) {
        byte[] single = RunningService.post("/v1/plans", unit).asByteArray();
        byte[] streamed = call.line().orElseThrow().getBytes(StandardCharsets.UTF_8);
        assertArrayEquals(single, streamed, unit.get("reference").textValue());
      }
      assertEquals(List.of(), call.lines());
      sent.get();
    }
  }

  private static void send(List<ObjectNode> units, StreamCall call) {
    try {
      for (ObjectNode unit : units) {
        call.send(unit + "\n");
      }
      call.end();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aBadLineHasItsNumberAndTheOthersGoOn() {
    String bad = RunningService.example("bad-request.json").toString();
    List<JsonNode> answers = stream("\n" + RECTANGLE + "\r\n{}\n\r\n" + bad + "\n[1\n" + RECTANGLE);
    assertEquals(5, answers.size());
    assertEquals("rectangle (invented)", answers.get(0).get("reference").textValue());
    refused(answers.get(1), 3, 422, "invalid");
    assertEquals("missing", answers.get(1).at("/errors/0/code").textValue());
    refused(answers.get(2), 5, 422, "unanswerable");
    assertEquals(
        List.of("#/survey/setups/0/readings/1/x", "#/survey/benchmarks/0/point"),
        answers.get(2).findValuesAsText("pointer"));
    refused(answers.get(3), 6, 400, "not-json");
    assertEquals(answers.get(0), answers.get(4));
  }

  @Test
  void halfALineAtTheEndIsABadLine() {
    List<JsonNode> answers = stream(RECTANGLE + "\n" + RECTANGLE.substring(0, 300));
    assertEquals(2, answers.size());
    assertTrue(answers.get(0).has("depth"));
    refused(answers.get(1), 2, 400, "not-json");
  }

  @Test
  void eachLineHasItsOwnUnits() {
    String us = RunningService.example("sample-us.json").toString();
    List<JsonNode> answers = stream(us + "\n" + RECTANGLE + "\n");
    assertEquals("us", answers.get(0).get("units").textValue());
    assertEquals("[in_i]", answers.get(0).at("/unitCodes/height").textValue());
    assertEquals("metric", answers.get(1).get("units").textValue());
  }

  @Test
  void aLineOf100MegabytesIsRefusedAndTheNextCounts() throws Exception {
    byte[] megabyte = "9".repeat(MEGABYTE).getBytes(StandardCharsets.UTF_8);
    try (StreamCall call = call()) {
      call.send("{\"units\":");
      for (int i = 0; i < 100; i++) {
        call.send(megabyte);
      }
      call.send("}\n" + RECTANGLE + "\n").end();
      List<String> answers = call.lines();
      assertEquals(2, answers.size());
      JsonNode problem = tree(answers.get(0));
      refused(problem, 1, 413, "too-large");
      assertEquals(
          "A line may have at most 4000000 bytes; see limits in /v1/capabilities.",
          problem.get("detail").textValue());
      assertTrue(tree(answers.get(1)).has("depth"));
    }
  }

  @Test
  void limitsAreTold() {
    Response answer = RunningService.given().get("/v1/capabilities");
    assertEquals(PlanLines.LINE_BYTES, (Integer) answer.path("limits.lineBytes"));
    assertEquals(PlanStreams.MOST, (Integer) answer.path("limits.streams"));
  }

  @Test
  void errorsBeforeTheFirstLineAreProblems() {
    Refusals.problem(
        RunningService.given()
            .contentType("application/json")
            .body(RECTANGLE)
            .post(PlanStreams.PATH),
        415,
        "unsupported-media-type");
    Refusals.problem(
        RunningService.given()
            .contentType(PlanStreams.NDJSON)
            .header("Content-Encoding", "gzip")
            .body(RECTANGLE.getBytes(StandardCharsets.UTF_8))
            .post(PlanStreams.PATH),
        415,
        "unsupported-media-type");
    Refusals.problem(
        RunningService.given()
            .contentType(PlanStreams.NDJSON)
            .accept("application/json")
            .body(RECTANGLE.getBytes(StandardCharsets.UTF_8))
            .post(PlanStreams.PATH),
        406,
        "not-acceptable");
    Refusals.problem(RunningService.given().get(PlanStreams.PATH), 405, "method-not-allowed");
  }

  private static StreamCall call() throws IOException {
    return new StreamCall(RunningService.uri().getPort());
  }

  private static List<JsonNode> stream(String lines) {
    Response answer =
        RunningService.given()
            .contentType(PlanStreams.NDJSON)
            .body(lines.getBytes(StandardCharsets.UTF_8))
            .post(PlanStreams.PATH);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.asString().lines().map(PlanStreamsTest::tree).toList();
  }

  private static JsonNode tree(String line) {
    return Trees.of(line.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(JsonNode problem, int line, int status, String kind) {
    assertEquals(line, problem.get("line").intValue(), problem.toString());
    assertEquals(status, problem.get("status").intValue(), problem.toString());
    assertEquals("urn:fillplane:problem:" + kind, problem.get("type").textValue());
  }
}
