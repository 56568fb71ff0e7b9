package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A value in a tree, with what it stands in.
 *
 * @param name its name, where it is a property
 * @param index its index, where it is an element
 */
record Spot(JsonNode parent, String name, int index) {

  /** Stops at a value on the way down with this chance, in parts of 5. */
  private static final int STOP = 5;

  /** A value of {@code tree}, which is an object or an array that holds something. */
  static Spot in(JsonNode tree, Random random) {
    Spot spot = child(tree, random);
    while (spot.value().isContainerNode()
        && !spot.value().isEmpty()
        && !Chance.oneIn(STOP, random)) {
      spot = child(spot.value(), random);
    }
    return spot;
  }

  private static Spot child(JsonNode parent, Random random) {
    if (parent instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      return new Spot(parent, Chance.of(names, random), -1);
    }
    return new Spot(parent, "", random.nextInt(parent.size()));
  }

  JsonNode value() {
    return index < 0 ? parent.get(name) : parent.get(index);
  }

  void put(JsonNode value) {
    if (parent instanceof ObjectNode object) {
      object.set(name, value);
    } else {
      ((ArrayNode) parent).set(index, value);
    }
  }

  void remove() {
    if (parent instanceof ObjectNode object) {
      object.remove(name);
    } else {
      ((ArrayNode) parent).remove(index);
    }
  }
}
