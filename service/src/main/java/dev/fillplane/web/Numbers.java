package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.POJONode;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Sentences;
import dev.fillplane.web.json.TableValues;
import java.util.List;
import java.util.Map;

/** Finds numbers that are JSON but too large for a computer to hold, such as {@code 1e999}. */
final class Numbers {

  private Numbers() {}

  static void findInfinite(JsonNode node, Place place, List<Problem.Error> faults) {
    if (node.isObject()) {
      node.properties()
          .forEach(entry -> findInfinite(entry.getValue(), place.at(entry.getKey()), faults));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        JsonNode element = node.get(i);
        if (element.isContainerNode() || isInfinite(element)) {
          findInfinite(element, place.at(i), faults);
        }
      }
    } else if (node instanceof POJONode values) {
      ((TableValues) values.getPojo())
          .odd()
          .forEach((index, element) -> findInfinite(element, place.at(index), faults));
    } else if (isInfinite(node)) {
      faults.add(
          new Problem.Error(
              "number-too-large",
              place.toString(),
              Sentences.of("number-too-large", Map.of(), UnitSystem.METRIC)));
    }
  }

  private static boolean isInfinite(JsonNode node) {
    return node.isNumber() && !Double.isFinite(node.doubleValue());
  }
}
