package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.fillplane.finding.Place;
import dev.fillplane.openapi.Contract;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The schema of an object whose properties are numbers and texts, read once and checked fast. */
final class FlatShape {

  private record Property(boolean number, int minLength, int maxLength, Pattern pattern) {}

  private final Map<String, Property> properties = new LinkedHashMap<>();
  private final String[] required;

  private FlatShape(Contract contract, String name) {
    JsonNode schema = contract.schema(name);
    schema
        .path("properties")
        .properties()
        .forEach(entry -> properties.put(entry.getKey(), property(contract, entry.getValue())));
    required = new String[schema.path("required").size()];
    for (int i = 0; i < required.length; i++) {
      required[i] = schema.get("required").get(i).textValue();
    }
  }

  static FlatShape of(Contract contract, String schema) {
    return new FlatShape(contract, schema);
  }

  private static Property property(Contract contract, JsonNode told) {
    JsonNode schema = told;
    if (told.has("$ref")) {
      schema = contract.schema(told.get("$ref").textValue().replaceFirst(".*/", ""));
    }
    String type = schema.path("type").textValue();
    if (!"number".equals(type) && !"string".equals(type)) {
      throw new IllegalStateException("not a flat property: " + schema);
    }
    String pattern = schema.path("pattern").textValue();
    return new Property(
        "number".equals(type),
        schema.path("minLength").asInt(0),
        schema.path("maxLength").asInt(Integer.MAX_VALUE),
        pattern == null ? null : Pattern.compile(pattern));
  }

  /** Adds the faults of the element {@code index} of the list at {@code list}. */
  void check(JsonNode element, Place list, int index, List<Problem.Fault> faults) {
    if (!element.isObject()) {
      add("type", list.at(index), "", "object", faults);
      return;
    }
    for (String name : required) {
      if (!element.has(name)) {
        add("required", list.at(index).at(name), name, "", faults);
      }
    }
    for (Map.Entry<String, JsonNode> entry : element.properties()) {
      Property property = properties.get(entry.getKey());
      if (property == null) {
        add("additionalProperties", list.at(index).at(entry.getKey()), entry.getKey(), "", faults);
      } else if (property.number() != entry.getValue().isNumber()
          || property.number() == entry.getValue().isTextual()) {
        String type = property.number() ? "number" : "string";
        add("type", list.at(index).at(entry.getKey()), "", type, faults);
      } else if (!property.number()) {
        text(property, entry.getValue().textValue(), list.at(index).at(entry.getKey()), faults);
      }
    }
  }

  private static void text(
      Property property, String text, Place place, List<Problem.Fault> faults) {
    int length = text.codePointCount(0, text.length());
    if (length < property.minLength()) {
      add("minLength", place, "", String.valueOf(property.minLength()), faults);
    } else if (length > property.maxLength()) {
      add("maxLength", place, "", String.valueOf(property.maxLength()), faults);
    }
    if (property.pattern() != null && !property.pattern().matcher(text).find()) {
      add("pattern", place, "", property.pattern().pattern(), faults);
    }
  }

  private static void add(
      String keyword, Place place, String property, String limit, List<Problem.Fault> faults) {
    faults.add(
        SchemaGate.fault(
            keyword, place.toString(), property, JsonNodeFactory.instance.textNode(limit)));
  }
}
