package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.json.Sentences;
import dev.fillplane.web.json.TableValues;
import java.util.List;
import java.util.Map;

/** Finds numbers that are JSON but cannot be a measurement, such as {@code 1e999}. */
final class Numbers {

  private Numbers() {}

  static void findTooLarge(JsonNode node, Place place, List<Problem.Fault> faults) {
    if (node.isObject()) {
      node.properties()
          .forEach(entry -> findTooLarge(entry.getValue(), place.at(entry.getKey()), faults));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        JsonNode element = node.get(i);
        if (element.isContainerNode() || isTooLarge(element)) {
          findTooLarge(element, place.at(i), faults);
        }
      }
    } else if (node instanceof POJONode values) {
      ((TableValues) values.getPojo())
          .odd()
          .forEach((index, element) -> findTooLarge(element, place.at(index), faults));
    } else if (isTooLarge(node)) {
      faults.add(
          new Problem.Fault(
              "number-too-large",
              place.toString(),
              Sentences.of("number-too-large", Map.of(), UnitSystem.METRIC)));
    }
  }

  /** The same with 0 for numbers that are too large, on which the general validator fails. */
  static JsonNode tamed(JsonNode node) {
    if (node.isObject()) {
      ObjectNode tamed = JsonNodeFactory.instance.objectNode();
      node.properties().forEach(entry -> tamed.set(entry.getKey(), tamed(entry.getValue())));
      return tamed;
    }
    if (node.isArray()) {
      ArrayNode tamed = JsonNodeFactory.instance.arrayNode();
      node.forEach(element -> tamed.add(tamed(element)));
      return tamed;
    }
    return isTooLarge(node) ? JsonNodeFactory.instance.numberNode(0) : node;
  }

  private static boolean isTooLarge(JsonNode node) {
    return node.isNumber() && !(Math.abs(node.doubleValue()) <= Json.LARGEST_NUMBER);
  }
}
