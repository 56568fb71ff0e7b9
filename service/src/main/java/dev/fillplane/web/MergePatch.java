package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** JSON merge patches by the algorithm of RFC 7396, section 2. */
final class MergePatch {

  private MergePatch() {}

  /** A document with a patch merged in; both stay as they are. */
  static JsonNode merged(JsonNode document, JsonNode patch) {
    if (!patch.isObject()) {
      return patch;
    }
    ObjectNode result = JsonNodeFactory.instance.objectNode();
    if (document.isObject()) {
      result.setAll((ObjectNode) document);
    }
    for (var property : patch.properties()) {
      if (property.getValue().isNull()) {
        result.remove(property.getKey());
      } else {
        JsonNode before = result.path(property.getKey());
        result.set(property.getKey(), merged(before, property.getValue()));
      }
    }
    return result;
  }
}
