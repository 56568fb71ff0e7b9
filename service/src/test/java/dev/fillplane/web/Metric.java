package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Words;
import java.util.Arrays;

/**
 * Turns values in US units into metric ones, or back, by the dimensions that the contract tells.
 */
public final class Metric {

  private final JsonNode document = RunningService.CONTRACT.document();
  private final UnitSystem from;
  private final UnitSystem to;

  private Metric(UnitSystem from, UnitSystem to) {
    this.from = from;
    this.to = to;
  }

  /** {@code value} of the schema {@code name}, in metric units. */
  public static JsonNode of(String name, JsonNode value) {
    return new Metric(UnitSystem.US, UnitSystem.METRIC).convert(name, value);
  }

  /** A metric {@code value} of the schema {@code name} in US units; tables are left as they are. */
  public static JsonNode toUs(String name, JsonNode value) {
    return new Metric(UnitSystem.METRIC, UnitSystem.US).convert(name, value);
  }

  private JsonNode convert(String name, JsonNode value) {
    return convert(document.at("/components/schemas/" + name), value);
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
  private JsonNode amount(ObjectNode amount) {
    Dimension dimension =
        Arrays.stream(Dimension.values())
            .filter(d -> d.unit(from).code().equals(amount.get("unit").textValue()))
            .findFirst()
            .orElseThrow();
    amount.set("value", number(dimension, amount.get("value")));
    return amount.put("unit", dimension.unit(to).code());
  }

  private JsonNode number(Dimension dimension, JsonNode value) {
    double inside = dimension.unit(from).toSi(value.doubleValue());
    return DoubleNode.valueOf(dimension.unit(to).fromSi(inside));
  }
}
