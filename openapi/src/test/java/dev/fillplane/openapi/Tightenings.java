package dev.fillplane.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Names that generated clients are made of and limits of requests, in two contracts: what was
 * renamed, what was tightened, which quantity changed its dimension.
 */
final class Tightenings {

  private static final List<String> LEAST = List.of("minItems", "minLength", "minimum");
  private static final List<String> MOST = List.of("maxItems", "maxLength", "maximum");
  private static final List<String> NEW = List.of("pattern", "uniqueItems", "exclusiveMinimum");

  private final JsonNode released;
  private final JsonNode present;
  private final Set<String> compared = new TreeSet<>();
  private final List<String> breaks = new ArrayList<>();

  private Tightenings(JsonNode released, JsonNode present) {
    this.released = released;
    this.present = present;
  }

  static List<String> between(JsonNode released, JsonNode present) {
    Tightenings tightenings = new Tightenings(released, present);
    for (Map.Entry<String, JsonNode> path : released.path("paths").properties()) {
      for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
        JsonNode now = present.path("paths").path(path.getKey()).path(operation.getKey());
        if (now.isObject()) {
          tightenings.operation(path.getKey(), operation.getValue(), now);
        }
      }
    }
    return tightenings.breaks;
  }

  private void operation(String path, JsonNode was, JsonNode is) {
    for (String name : List.of("operationId", "tags")) {
      if (!was.path(name).equals(is.path(name))) {
        breaks.add(path + ": " + name + " was " + was.path(name) + ", is " + is.path(name));
      }
    }
    for (JsonNode parameter : was.path("parameters")) {
      JsonNode old = resolve(parameter, released);
      for (JsonNode now : is.path("parameters")) {
        if (old.path("name").equals(resolve(now, present).path("name"))) {
          String place = path + "?" + old.path("name").asText();
          compare(place, old.path("schema"), resolve(now, present).path("schema"), true);
        }
      }
    }
    bodies(path, was.path("requestBody"), is.path("requestBody"), true);
    for (Map.Entry<String, JsonNode> answer : was.path("responses").properties()) {
      bodies(path, answer.getValue(), is.path("responses").path(answer.getKey()), false);
    }
  }

  private void bodies(String place, JsonNode was, JsonNode is, boolean sent) {
    JsonNode contents = resolve(was, released).path("content");
    for (Map.Entry<String, JsonNode> content : contents.properties()) {
      JsonNode now = resolve(is, present).path("content").path(content.getKey());
      compare(place, content.getValue().path("schema"), now.path("schema"), sent);
    }
  }

  private void compare(String place, JsonNode was, JsonNode is, boolean sent) {
    String reference = was.path("$ref").asText("");
    if (!reference.isEmpty() && !compared.add(reference + sent)) {
      return;
    }
    JsonNode old = resolve(was, released);
    JsonNode now = resolve(is, present);
    String here = reference.isEmpty() ? place : reference.substring(reference.lastIndexOf('/') + 1);
    if (!old.path("x-dimension").equals(now.path("x-dimension"))) {
      breaks.add(here + ": measures something else");
    }
    if (sent) {
      limits(here, old, now);
    }
    for (Map.Entry<String, JsonNode> property : old.path("properties").properties()) {
      JsonNode there = now.path("properties").path(property.getKey());
      if (there.isObject()) {
        compare(here + "." + property.getKey(), property.getValue(), there, sent);
      } else {
        breaks.add(here + "." + property.getKey() + " is gone");
      }
    }
    if (old.has("items") && now.has("items")) {
      compare(here + "[]", old.get("items"), now.get("items"), sent);
    }
    if (old.has("x-line")) {
      compare(here + " line", old.get("x-line"), now.path("x-line"), sent);
    }
  }

  private void limits(String place, JsonNode was, JsonNode is) {
    for (String keyword : LEAST) {
      double least = was.path(keyword).asDouble(Double.NEGATIVE_INFINITY);
      if (is.has(keyword) && is.get(keyword).asDouble() > least) {
        breaks.add(place + ": " + keyword + " is now " + is.get(keyword));
      }
    }
    for (String keyword : MOST) {
      double most = was.path(keyword).asDouble(Double.POSITIVE_INFINITY);
      if (is.has(keyword) && is.get(keyword).asDouble() < most) {
        breaks.add(place + ": " + keyword + " is now " + is.get(keyword));
      }
    }
    if (is.has("enum") && !was.has("enum")) {
      breaks.add(place + ": only some words are taken now");
    }
    for (String keyword : NEW) {
      if (is.has(keyword) && !is.get(keyword).equals(was.path(keyword))) {
        breaks.add(place + ": " + keyword + " is now " + is.get(keyword));
      }
    }
  }

  private static JsonNode resolve(JsonNode node, JsonNode contract) {
    String reference = node.path("$ref").asText("");
    return reference.isEmpty() ? node : contract.at(reference.substring(1));
  }
}
