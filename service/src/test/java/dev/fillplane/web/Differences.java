package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Where two JSON trees differ; numbers may differ by a tolerance, relative and absolute. */
final class Differences {

  private static final int SHOWN = 10;

  private final double tolerance;
  private final List<String> found = new ArrayList<>();
  private int numbers;

  private Differences(double tolerance) {
    this.tolerance = tolerance;
  }

  /** Fails with the first differences, or if fewer than {@code least} numbers were compared. */
  static void none(JsonNode expected, JsonNode actual, double tolerance, int least) {
    Differences differences = new Differences(tolerance);
    differences.compare("", expected, actual);
    assertEquals(List.of(), differences.found.stream().limit(SHOWN).toList());
    assertEquals(least, Math.min(least, differences.numbers), "numbers compared");
  }

  private void compare(String place, JsonNode expected, JsonNode actual) {
    if (expected.isNumber() && actual.isNumber()) {
      number(place, expected.doubleValue(), actual.doubleValue());
    } else if (expected.getNodeType() != actual.getNodeType()) {
      found.add(place + ": " + expected + " is " + actual);
    } else if (expected.isObject()) {
      object(place, expected, actual);
    } else if (expected.isArray()) {
      array(place, expected, actual);
    } else if (!expected.equals(actual)) {
      found.add(place + ": " + expected + " is " + actual);
    }
  }

  private void number(String place, double expected, double actual) {
    numbers++;
    double allowed = tolerance * Math.max(1, Math.abs(expected));
    if (!(Math.abs(expected - actual) <= allowed)) {
      found.add(place + ": " + expected + " is " + actual);
    }
  }

  private void object(String place, JsonNode expected, JsonNode actual) {
    TreeSet<String> names = new TreeSet<>();
    expected.fieldNames().forEachRemaining(names::add);
    actual.fieldNames().forEachRemaining(names::add);
    for (String name : names) {
      compare(place + "/" + name, expected.path(name), actual.path(name));
    }
  }

  private void array(String place, JsonNode expected, JsonNode actual) {
    if (expected.size() != actual.size()) {
      found.add(place + ": " + expected.size() + " elements are " + actual.size());
      return;
    }
    for (int i = 0; i < expected.size(); i++) {
      compare(place + "/" + i, expected.get(i), actual.get(i));
    }
  }
}
