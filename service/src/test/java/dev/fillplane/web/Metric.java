package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Words;
import java.util.Arrays;

/** Turns an answer in US units into metric ones by the dimensions that the contract tells. */
final class Metric {

  private final JsonNode document = RunningService.CONTRACT.document();

  /** {@code value} of the schema {@code name}, in metric units. */
  static JsonNode of(String name, JsonNode value) {
    Metric metric = new Metric();
    return metric.convert(metric.document.at("/components/schemas/" + name), value);
  }

  private JsonNode convert(JsonNode told, JsonNode value) {
    JsonNode schema =
        told.has("$ref") ? document.at(told.get("$ref").textValue().substring(1)) : told;
    if (value.isObject()) {
      ObjectNode object = ((ObjectNode) value).objectNode();
      for (var property : value.properties()) {
        JsonNode of = schema.path("properties").path(property.getKey());
        object.set(property.getKey(), convert(of, property.getValue()));
      }
      return isAmount(schema) ? amount(object) : object;
    }
    if (value.isArray()) {
      ArrayNode array = ((ArrayNode) value).arrayNode();
      value.forEach(element -> array.add(convert(schema.path("items"), element)));
      return array;
    }
    if (value.isNumber() && schema.has("x-dimension")) {
      String dimension = schema.get("x-dimension").textValue();
      return number(
          Arrays.stream(Dimension.values())
              .filter(d -> Words.property(d).equals(dimension))
              .findFirst()
              .orElseThrow(),
          value);
    }
    return value;
  }

  private boolean isAmount(JsonNode schema) {
    return schema.equals(document.at("/components/schemas/Amount"));
  }

  /** Its unit tells its dimension. */
  private static JsonNode amount(ObjectNode amount) {
    Dimension dimension =
        Arrays.stream(Dimension.values())
            .filter(d -> d.unit(UnitSystem.US).code().equals(amount.get("unit").textValue()))
            .findFirst()
            .orElseThrow();
    amount.set("value", number(dimension, amount.get("value")));
    return amount.put("unit", dimension.unit(UnitSystem.METRIC).code());
  }

  private static JsonNode number(Dimension dimension, JsonNode value) {
    double inside = dimension.unit(UnitSystem.US).toSi(value.doubleValue());
    return DoubleNode.valueOf(dimension.unit(UnitSystem.METRIC).fromSi(inside));
  }
}
