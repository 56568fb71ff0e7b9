package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Takes parts out of a tree as long as it still fails. */
final class Shrinker {

  private static final int TRIES = 300;

  private final Predicate<JsonNode> fails;
  private int tries;

  private Shrinker(Predicate<JsonNode> fails) {
    this.fails = fails;
  }

  /** A part of {@code tree} that fails, from which not much can be taken. */
  static JsonNode shrink(JsonNode tree, Predicate<JsonNode> fails) {
    Shrinker shrinker = new Shrinker(fails);
    JsonNode left = tree.deepCopy();
    shrinker.shrink(left, left);
    return left;
  }

  private void shrink(JsonNode root, JsonNode node) {
    if (node instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      for (String name : names) {
        JsonNode taken = object.remove(name);
        if (!stillFails(root)) {
          object.set(name, taken);
          shrink(root, taken);
        }
      }
    } else if (node instanceof ArrayNode array) {
      elements(root, array);
    }
  }

  private void elements(JsonNode root, ArrayNode array) {
    for (int i = array.size() - 1; i >= 0; i--) {
      JsonNode taken = array.remove(i);
      if (!stillFails(root)) {
        array.insert(i, taken);
        shrink(root, taken);
      }
    }
  }

  private boolean stillFails(JsonNode root) {
    return tries++ < TRIES && fails.test(root);
  }
}
