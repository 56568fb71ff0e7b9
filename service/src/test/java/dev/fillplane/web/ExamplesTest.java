package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.restassured.OpenApiValidationFilter;
import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of a request in the contract gets the answer that the contract promises. */
class ExamplesTest {

  /** Holds requests and answers against the contract, with nothing let through. */
  private static final OpenApiValidationFilter STRICT =
      new OpenApiValidationFilter(
          OpenApiInteractionValidator.createForInlineApiSpecification(
                  RunningService.CONTRACT.yaml())
              .build());

  record Example(String path, String name, String mediaType, JsonNode body) {
    @Override
    public String toString() {
      return path + " " + name;
    }
  }

  static Stream<Example> examples() {
    List<Example> examples = new ArrayList<>();
    for (var path : RunningService.CONTRACT.document().get("paths").properties()) {
      for (var content : path.getValue().at("/post/requestBody/content").properties()) {
        for (var example : content.getValue().path("examples").properties()) {
          JsonNode body = example.getValue().get("value");
          examples.add(new Example(path.getKey(), example.getKey(), content.getKey(), body));
        }
      }
    }
    return examples.stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void isAnswered(Example example) {
    JsonNode told = example.body();
    String body = told.isTextual() ? told.textValue() : told.toString();
    Response answer = post(example.path(), example.mediaType(), body);
    int wanted = example.path().startsWith("/v1/job") ? 202 : 200;
    assertEquals(wanted, answer.statusCode(), answer.asString());
  }

  @Test
  void everyOperationWithABodyHasOne() {
    List<String> paths = examples().map(Example::path).distinct().sorted().toList();
    List<String> posted = new ArrayList<>();
    for (var path : RunningService.CONTRACT.document().get("paths").properties()) {
      if (path.getValue().has("post")) {
        posted.add(path.getKey());
      }
    }
    assertEquals(posted.stream().sorted().toList(), paths);
    assertTrue(examples().count() >= 12, "examples: " + examples().count());
  }

  /** Its two faults are against sense, so that it fits its schema and is refused all the same. */
  @Test
  void badRequestIsRefused() {
    Response answer =
        post(
            "/v1/plans", "application/json", RunningService.example("bad-request.json").toString());
    assertEquals(422, answer.statusCode());
    List<Map<String, String>> errors = answer.path("errors");
    assertEquals(
        List.of("#/survey/benchmarks/0/point", "#/survey/setups/0/readings/1/x"),
        errors.stream().map(error -> error.get("pointer")).sorted().toList());
  }

  private static Response post(String path, String mediaType, String body) {
    String type = mediaType.startsWith("text/") ? mediaType + "; charset=utf-8" : mediaType;
    return RunningService.open()
        .filter(STRICT)
        .contentType(type)
        .body(body.getBytes(StandardCharsets.UTF_8))
        .post(path);
  }
}
