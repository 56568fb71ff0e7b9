package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.json.Json;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Reads and rearranges JSON trees of tests. */
public final class Trees {

  private Trees() {}

  /** The tree of a text; single quotes stand for double ones. */
  public static ObjectNode of(String text) {
    return (ObjectNode) of(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  public static JsonNode of(byte[] text) {
    try {
      return Json.tree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode of(Response answer) {
    return of(answer.asByteArray());
  }

  /** The same with the properties of every object in the opposite order of their names. */
  public static JsonNode backwards(JsonNode tree) {
    if (tree.isObject()) {
      TreeMap<String, JsonNode> properties = new TreeMap<>(Comparator.reverseOrder());
      tree.properties().forEach(e -> properties.put(e.getKey(), backwards(e.getValue())));
      return ((ObjectNode) tree).objectNode().setAll(properties);
    }
    if (tree.isArray()) {
      ArrayNode array = ((ArrayNode) tree).arrayNode();
      tree.forEach(element -> array.add(backwards(element)));
      return array;
    }
    return tree;
  }

  public static List<JsonNode> elements(JsonNode array) {
    List<JsonNode> elements = new ArrayList<>();
    array.forEach(elements::add);
    return elements;
  }

  /** Puts {@code elements} in place of those of {@code array}. */
  public static void refill(JsonNode array, List<JsonNode> elements) {
    ((ArrayNode) array).removeAll().addAll(elements);
  }
}
