package dev.fillplane.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes one document of the contract's files: components collected by name, path items and examples
 * put in place, references turned to {@code #/components/...}.
 */
final class Bundler {
  private static final String ROOT = "openapi.yaml";
  private static final List<String> SINGLE_FILES =
      List.of("responses", "parameters", "headers", "requestBodies");

  private final ContractFiles files;
  private final Map<String, String> rootReferences = new LinkedHashMap<>();

  Bundler(ContractFiles files) {
    this.files = files;
  }

  ObjectNode bundle() throws IOException {
    ObjectNode document = (ObjectNode) rewrite(files.content(ROOT), ROOT, "");
    ObjectNode components = document.withObject("/components");
    for (String name : files.names("schemas", ".yaml")) {
      collect(name, components.withObject("/schemas"));
    }
    for (String section : SINGLE_FILES) {
      if (files.has(section + ".yaml")) {
        collect(section + ".yaml", components.withObject("/" + section));
      }
    }
    rootReferences.forEach((pointer, file) -> require(document.at(pointer), file, "#" + pointer));
    return document;
  }

  private void collect(String file, ObjectNode section) throws IOException {
    for (Map.Entry<String, JsonNode> entry : files.content(file).properties()) {
      if (section.has(entry.getKey())) {
        throw new IllegalStateException(
            file + ": there is another component named " + entry.getKey() + ".");
      }
      section.set(entry.getKey(), rewrite(entry.getValue(), file, entry.getKey()));
    }
  }

  /** A copy of a node of a file, standing under a key, with its references turned. */
  private JsonNode rewrite(JsonNode node, String file, String key) throws IOException {
    if (node.isArray()) {
      ArrayNode items = JsonNodeFactory.instance.arrayNode();
      for (JsonNode item : node) {
        items.add(rewrite(item, file, key));
      }
      return items;
    }
    if (!node.isObject()) {
      return node;
    }
    ObjectNode copy = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      String name = entry.getKey();
      JsonNode value = entry.getValue();
      if (name.equals("$ref") && value.isTextual()) {
        JsonNode target = follow(value.textValue(), file, key);
        if (!target.isObject()) {
          return target;
        }
        copy.setAll((ObjectNode) target);
      } else if (key.equals("discriminator") && name.equals("mapping")) {
        ObjectNode mapping = copy.putObject(name);
        for (Map.Entry<String, JsonNode> kind : value.properties()) {
          mapping.set(kind.getKey(), follow(kind.getValue().textValue(), file, key).get("$ref"));
        }
      } else {
        copy.set(name, rewrite(value, file, name));
      }
    }
    return copy;
  }

  /** What stands in place of a reference: a reference into the document, or the content itself. */
  private JsonNode follow(String reference, String file, String key) throws IOException {
    URI target = URI.create(file).resolve(reference);
    String name = target.getPath();
    String pointer = target.getFragment() == null ? "" : target.getFragment();
    if (name.equals(ROOT)) {
      rootReferences.putIfAbsent(pointer, file);
      return reference(pointer);
    }
    if (!files.has(name)) {
      throw nowhere(file, reference);
    }
    JsonNode content = require(files.content(name).at(pointer), file, reference);
    String section = name.startsWith("schemas/") ? "schemas" : name.replace(".yaml", "");
    if (section.equals("schemas") || SINGLE_FILES.contains(section)) {
      return reference("/components/" + section + pointer);
    }
    if (name.endsWith(".json")) {
      boolean inPlace = key.equals("value") || key.equals("example");
      return inPlace ? content : JsonNodeFactory.instance.objectNode().set("value", content);
    }
    return rewrite(content, name, key);
  }

  private static ObjectNode reference(String pointer) {
    return JsonNodeFactory.instance.objectNode().put("$ref", "#" + pointer);
  }

  private static JsonNode require(JsonNode found, String file, String reference) {
    if (found.isMissingNode()) {
      throw nowhere(file, reference);
    }
    return found;
  }

  private static IllegalStateException nowhere(String file, String reference) {
    return new IllegalStateException(file + ": nothing is at " + reference + ".");
  }
}
