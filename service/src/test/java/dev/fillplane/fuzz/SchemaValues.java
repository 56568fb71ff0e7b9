package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Values that fit a schema of the contract. Numbers are mostly those that are usual for their
 * dimension, sometimes the ends of what is allowed, sometimes of any magnitude.
 */
final class SchemaValues {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final double[] OF_NO_DIMENSION = {0, 1};

  /** What is usual of each dimension, metric. */
  private static final Map<String, double[]> USUAL =
      Map.ofEntries(
          Map.entry("plan", new double[] {0, 8}),
          Map.entry("height", new double[] {0, 30}),
          Map.entry("heightVariance", new double[] {0, 10}),
          Map.entry("slope", new double[] {0, 3}),
          Map.entry("area", new double[] {1, 80}),
          Map.entry("fill", new double[] {5, 40}),
          Map.entry("liquid", new double[] {3, 7}),
          Map.entry("coverage", new double[] {3, 10}),
          Map.entry("mass", new double[] {5, 30}),
          Map.entry("density", new double[] {1200, 2600}),
          Map.entry("temperature", new double[] {8, 30}),
          Map.entry("temperatureDifference", new double[] {0, 4}),
          Map.entry("airspeed", new double[] {0, 20}),
          Map.entry("surfaceLoad", new double[] {0, 5}),
          Map.entry("time", new double[] {5, 60}),
          Map.entry("molarEnergy", new double[] {20, 60}),
          Map.entry("angle", new double[] {0, 120}));

  private static final List<String> WORDS =
      List.of("hall", "1", "unit 3", "\u00e9tage \u2116 2", "room 1", "EUR", "h", "p1");

  private final JsonNode document;
  private final Random random;

  SchemaValues(JsonNode document, Random random) {
    this.document = document;
    this.random = random;
  }

  /** A value of the schema of a name. */
  JsonNode of(String name) {
    return of(document.at("/components/schemas/" + name));
  }

  JsonNode of(JsonNode schema) {
    if (schema.has("$ref")) {
      return of(document.at(schema.get("$ref").textValue().substring(1)));
    }
    if (schema.has("enum")) {
      return schema.get("enum").get(random.nextInt(schema.get("enum").size()));
    }
    return switch (schema.path("type").asText()) {
      case "object" -> object(schema);
      case "array" -> array(schema);
      case "string" -> NODES.textNode(text(schema));
      case "boolean" -> NODES.booleanNode(random.nextBoolean());
      case "integer" -> NODES.numberNode(Math.round(number(schema, 0, 6)));
      default -> NODES.numberNode(number(schema));
    };
  }

  /** What must be, and about a third of what may be. */
  private ObjectNode object(JsonNode schema) {
    ObjectNode object = NODES.objectNode();
    String required = schema.path("required").toString();
    for (var property : schema.path("properties").properties()) {
      boolean must = required.contains("\"" + property.getKey() + "\"");
      if (must || Chance.oneIn(3, random)) {
        object.set(property.getKey(), of(property.getValue()));
      }
    }
    JsonNode others = schema.path("additionalProperties");
    if (others.isObject() && random.nextBoolean()) {
      object.set(Chance.of(WORDS, random), of(others));
    }
    return object;
  }

  private ArrayNode array(JsonNode schema) {
    int least = schema.path("minItems").asInt();
    int most = Math.min(schema.path("maxItems").asInt(5), least + 4);
    ArrayNode array = NODES.arrayNode();
    for (int i = least + random.nextInt(most - least + 1); i > 0; i--) {
      array.add(of(schema.get("items")));
    }
    return array;
  }

  private String text(JsonNode schema) {
    String pattern = schema.path("pattern").asText();
    if (pattern.contains("[0-9]{1,9}")) {
      return Chance.of(random, "0", "1.90", "4", "999999999.999999", "-3.5", "0.000001");
    }
    if (pattern.contains("https")) {
      return "https://hooks.invalid/" + random.nextInt(9);
    }
    if (pattern.contains("A-Z")) {
      return Chance.of(random, "EUR", "USD", "JPY", "ZZZ");
    }
    return pattern.contains("2[0-3]")
        ? Chance.of(random, "07:30", "00:00", "23:59")
        : Chance.of(WORDS, random);
  }

  private double number(JsonNode schema) {
    double[] usual = USUAL.getOrDefault(schema.path("x-dimension").asText(), OF_NO_DIMENSION);
    return number(schema, usual[0], usual[1]);
  }

  private double number(JsonNode schema, double from, double to) {
    double least = schema.path("minimum").asDouble(-1e15);
    double most = schema.path("maximum").asDouble(1e15);
    double number =
        switch (random.nextInt(12)) {
          case 0 -> least == -1e15 ? -from : least;
          case 1 -> most == 1e15 ? 2 * to : most;
          case 2 -> Chance.ofMagnitude(-12, 15, random);
          default -> Chance.between(from, to, random);
        };
    double open = schema.path("exclusiveMinimum").asBoolean() ? 1e-9 : 0;
    return Math.max(least + open, Math.min(most, number));
  }
}
