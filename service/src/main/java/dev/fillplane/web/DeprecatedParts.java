package dev.fillplane.web;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.web.Deprecations.Mark;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Parameters of an operation, and properties of its JSON body, that are deprecated. */
final class DeprecatedParts {

  private static final JsonFactory JSON = new JsonFactory();

  private final Map<String, Mark> parameters = new TreeMap<>();

  /** By the names down to the property, joined by slashes; lists add none. */
  private final Map<String, Mark> properties = new TreeMap<>();

  private DeprecatedParts() {}

  static DeprecatedParts of(JsonNode operation, JsonNode contract) {
    DeprecatedParts parts = new DeprecatedParts();
    for (JsonNode told : operation.path("parameters")) {
      JsonNode parameter = resolve(told, contract);
      Mark.of(parameter)
          .ifPresent(mark -> parts.parameters.put(parameter.path("name").asText(), mark));
    }
    JsonNode body = operation.at("/requestBody/content/application~1json/schema");
    parts.collect(body, "", contract, new TreeSet<>());
    return parts;
  }

  boolean isEmpty() {
    return parameters.isEmpty() && properties.isEmpty();
  }

  /** The marks of what a request uses. */
  Collection<Mark> usedBy(Context context) {
    Collection<Mark> used = new ArrayList<>();
    parameters.forEach(
        (name, mark) -> {
          if (context.queryParam(name) != null) {
            used.add(mark);
          }
        });
    if (!properties.isEmpty()) {
      used.addAll(toldIn(context.bodyAsBytes()));
    }
    return used;
  }

  private void collect(JsonNode told, String path, JsonNode contract, Set<String> within) {
    String reference = told.path("$ref").asText("");
    if (!reference.isEmpty() && !within.add(reference)) {
      return;
    }
    JsonNode schema = resolve(told, contract);
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      String place = path + "/" + property.getKey();
      Mark.of(property.getValue())
          .or(() -> Mark.of(resolve(property.getValue(), contract)))
          .ifPresent(mark -> properties.put(place, mark));
      collect(property.getValue(), place, contract, within);
    }
    schema.path("oneOf").forEach(one -> collect(one, path, contract, within));
    if (schema.has("items")) {
      collect(schema.get("items"), path, contract, within);
    }
    within.remove(reference);
  }

  /** A body that is not JSON uses nothing; it is refused later. */
  private Collection<Mark> toldIn(byte[] body) {
    Map<String, Mark> told = new TreeMap<>(properties);
    Set<String> places = new TreeSet<>();
    try (JsonParser in = JSON.createParser(body)) {
      for (JsonToken token = in.nextToken(); token != null; token = in.nextToken()) {
        if (token == JsonToken.FIELD_NAME) {
          String place = place(in.getParsingContext());
          if (properties.containsKey(place)) {
            places.add(place);
          }
        }
      }
    } catch (IOException e) {
      places.clear();
    }
    told.keySet().retainAll(places);
    return told.values();
  }

  private static String place(JsonStreamContext context) {
    String place = "";
    for (JsonStreamContext at = context; at != null; at = at.getParent()) {
      if (at.inObject()) {
        place = "/" + at.getCurrentName() + place;
      }
    }
    return place;
  }

  private static JsonNode resolve(JsonNode told, JsonNode contract) {
    String reference = told.path("$ref").asText("");
    return reference.isEmpty() ? told : contract.at(reference.substring(1));
  }
}
