package dev.fillplane.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Whoever calls the contract that was released last is served by the present one. The file is
 * replaced by a release only, as DEVELOPERS.md says.
 */
class BreakingChangesTest {

  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());
  private static final Path RELEASED = Path.of("released", "openapi.yaml");

  private static final String WISH = "/components/schemas/Wish";
  private static final String THING = "/components/schemas/Thing";

  /** A contract that has a bit of everything. */
  private static final String SMALL =
      """
      openapi: 3.0.3
      info: {title: Small, version: '1'}
      paths:
        /things:
          get:
            operationId: listThings
            tags: [things]
            parameters:
              - {name: span, in: query, required: false, schema: {type: number, maximum: 100}}
            responses:
              '200': {description: All., content: {application/json: {schema: {$ref: '#/components/schemas/Thing'}}}}
          post:
            operationId: makeThing
            tags: [things]
            requestBody:
              required: true
              content: {application/json: {schema: {$ref: '#/components/schemas/Wish'}}}
            responses:
              '200': {description: One., content: {application/json: {schema: {$ref: '#/components/schemas/Thing'}}}}
      components:
        schemas:
          Wish:
            type: object
            additionalProperties: false
            required: [kind]
            properties:
              kind: {type: string, enum: [round, square]}
              name: {type: string, maxLength: 80}
              depth: {type: number, x-dimension: height}
              parts: {type: array, minItems: 1, maxItems: 5, items: {type: number, minimum: 0}}
          Thing:
            type: object
            required: [id]
            properties:
              id: {type: string}
              depth: {type: number, x-dimension: height}
      """;

  @Test
  void theReleasedContractIsKept() throws IOException {
    JsonNode released = YAML.readTree(RELEASED.toFile());
    assertEquals(List.of(), BreakingChanges.between(released, Contract.load().document()));
  }

  @TestFactory
  Stream<DynamicTest> breaks() {
    Map<String, Consumer<ObjectNode>> breaks =
        Map.ofEntries(
            Map.entry("path gone", c -> at(c, "/paths").remove("/things")),
            Map.entry("operation gone", c -> at(c, "/paths/~1things").remove("get")),
            Map.entry("operation renamed", c -> get(c).put("operationId", "getThings")),
            Map.entry("tag changed", c -> get(c).putArray("tags").add("parts")),
            Map.entry("parameter gone", c -> get(c).remove("parameters")),
            Map.entry("parameter needed", c -> parameter(c).put("required", true)),
            Map.entry(
                "parameter limited",
                c -> ((ObjectNode) parameter(c).get("schema")).put("maximum", 9)),
            Map.entry(
                "new parameter needed",
                c ->
                    ((ArrayNode) get(c).get("parameters"))
                        .addObject()
                        .put("name", "more")
                        .put("in", "query")
                        .put("required", true)
                        .putObject("schema")
                        .put("type", "string")),
            Map.entry("property needed", c -> ((ArrayNode) wish(c).get("required")).add("name")),
            Map.entry(
                "new property needed",
                c -> {
                  property(c, "size").put("type", "number");
                  ((ArrayNode) wish(c).get("required")).add("size");
                }),
            Map.entry("property gone", c -> at(c, WISH + "/properties").remove("name")),
            Map.entry("type changed", c -> property(c, "name").put("type", "integer")),
            Map.entry("word gone", c -> property(c, "kind").putArray("enum").add("round")),
            Map.entry("words closed", c -> property(c, "name").putArray("enum").add("plan")),
            Map.entry("more parts needed", c -> property(c, "parts").put("minItems", 2)),
            Map.entry("fewer parts allowed", c -> property(c, "parts").put("maxItems", 4)),
            Map.entry("shorter names", c -> property(c, "name").put("maxLength", 79)),
            Map.entry("longer names", c -> property(c, "name").put("minLength", 1)),
            Map.entry("other names", c -> property(c, "name").put("pattern", "^[a-z]*$")),
            Map.entry(
                "larger numbers",
                c -> ((ObjectNode) property(c, "parts").get("items")).put("minimum", 1)),
            Map.entry("dimension changed", c -> property(c, "depth").put("x-dimension", "plan")),
            Map.entry(
                "answer measured otherwise", c -> answer(c, "depth").put("x-dimension", "plan")),
            Map.entry("answer gone", c -> at(c, THING + "/properties").remove("depth")),
            Map.entry("answer may miss", c -> at(c, THING).remove("required")),
            Map.entry("answer of another type", c -> answer(c, "id").put("type", "integer")));
    return breaks.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(),
                    () -> assertNotEquals(List.of(), changes(entry.getValue()), entry.getKey())));
  }

  @TestFactory
  Stream<DynamicTest> growth() {
    Map<String, Consumer<ObjectNode>> growth =
        Map.of(
            "nothing", c -> {},
            "new operation", c -> at(c, "/paths").set("/more", at(c, "/paths/~1things").deepCopy()),
            "new property", c -> property(c, "size").put("type", "number"),
            "new word", c -> ((ArrayNode) property(c, "kind").get("enum")).add("oval"),
            "more parts allowed", c -> property(c, "parts").put("maxItems", 6).put("minItems", 0),
            "longer names allowed", c -> property(c, "name").put("maxLength", 90),
            "answer tells more", c -> answer(c, "size").put("type", "number"),
            "described anew", c -> wish(c).put("description", "A wish."),
            "deprecated", c -> get(c).put("deprecated", true));
    return growth.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(), () -> assertEquals(List.of(), changes(entry.getValue()))));
  }

  private static List<String> changes(Consumer<ObjectNode> change) throws IOException {
    JsonNode released = YAML.readTree(SMALL);
    ObjectNode present = released.deepCopy();
    change.accept(present);
    return BreakingChanges.between(released, present);
  }

  private static ObjectNode at(ObjectNode contract, String pointer) {
    return (ObjectNode) contract.at(pointer);
  }

  private static ObjectNode get(ObjectNode contract) {
    return at(contract, "/paths/~1things/get");
  }

  private static ObjectNode parameter(ObjectNode contract) {
    return at(contract, "/paths/~1things/get/parameters/0");
  }

  private static ObjectNode wish(ObjectNode contract) {
    return at(contract, WISH);
  }

  private static ObjectNode property(ObjectNode contract, String name) {
    return contract.withObject(WISH + "/properties/" + name);
  }

  private static ObjectNode answer(ObjectNode contract, String name) {
    return contract.withObject(THING + "/properties/" + name);
  }
}
