package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.path.PathType;
import dev.fillplane.finding.Place;
import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Holds a body against its schema of the contract and tells every fault at its place. Long lists of
 * readings are held against theirs by {@link LongLists}. Safe to share.
 */
final class SchemaGate {

  private static final String IRI = "urn:fillplane:contract";

  private final Map<String, Schema> schemas = new TreeMap<>();
  private final LongLists longLists;

  /** A gate with the schemas of these names. */
  SchemaGate(Contract contract, List<String> names) {
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder()
            .formatAssertionsEnabled(true)
            .pathType(PathType.JSON_POINTER)
            .build();
    SchemaRegistry registry =
        SchemaRegistry.withDialect(
            Dialects.getOpenApi30(),
            builder ->
                builder
                    .schemaRegistryConfig(config)
                    .schemas(Map.of(IRI, contract.document().toString())));
    for (String name : names) {
      schemas.put(
          name, registry.getSchema(SchemaLocation.of(IRI + "#/components/schemas/" + name)));
    }
    longLists = LongLists.of(contract);
  }

  /** Every fault of {@code body}; empty if it fits the schema {@code name}. */
  List<Problem.Fault> faults(String name, JsonNode body) {
    List<Problem.Fault> faults = new ArrayList<>();
    JsonNode rest = longLists.takeOut(tamed(body, faults), faults);
    faults.addAll(faultsOfAll(name, rest));
    return faults;
  }

  /** Every fault of a body that has a request, with long lists of its own, as {@code part}. */
  List<Problem.Fault> faultsWith(String name, String part, JsonNode body) {
    List<Problem.Fault> faults = new ArrayList<>();
    JsonNode rest = tamed(body, faults);
    if (body.path(part).isObject()) {
      List<Problem.Fault> ofPart = new ArrayList<>();
      rest = LongLists.with(rest, part, longLists.takeOut(rest.get(part), ofPart));
      ofPart.stream().map(fault -> fault.under(Place.root().at(part))).forEach(faults::add);
    }
    faults.addAll(faultsOfAll(name, rest));
    return faults;
  }

  /** Tells numbers that are too large and takes them out, if there are any. */
  private static JsonNode tamed(JsonNode body, List<Problem.Fault> faults) {
    Numbers.findTooLarge(body, Place.root(), faults);
    return faults.isEmpty() ? body : Numbers.tamed(body);
  }

  /** The faults that the general validator finds, long lists and all. */
  List<Problem.Fault> faultsOfAll(String name, JsonNode body) {
    return schemas.get(name).validate(body).stream().map(SchemaGate::fault).toList();
  }

  private static Problem.Fault fault(Error error) {
    String pointer = "#" + error.getInstanceLocation();
    String property = error.getProperty();
    if (property != null) {
      pointer = pointer + "/" + property.replace("~", "~0").replace("/", "~1");
    }
    JsonNode schema = error.getSchemaNode();
    return fault(error.getKeyword(), pointer, property == null ? "" : property, schema);
  }

  /** The fault that breaking {@code keyword} of JSON Schema is. */
  static Problem.Fault fault(String keyword, String pointer, String property, JsonNode limit) {
    String code =
        switch (keyword) {
          case "type" -> "wrong-type";
          case "required" -> "missing";
          case "additionalProperties" -> "unknown-property";
          case "enum" -> "not-one-of";
          case "minItems" -> "too-few";
          case "maxItems" -> "too-many";
          case "minimum", "exclusiveMinimum" -> "too-small";
          case "maximum", "exclusiveMaximum" -> "too-big";
          case "minLength", "maxLength", "pattern" -> "bad-text";
          default -> "does-not-fit";
        };
    Map<String, Object> values = Map.of("property", property, "limit", text(limit));
    return new Problem.Fault(code, pointer, Sentences.of(code, values, UnitSystem.METRIC));
  }

  private static String text(JsonNode limit) {
    if (limit == null) {
      return "";
    }
    if (!limit.isArray()) {
      return limit.asText();
    }
    List<String> words = new ArrayList<>();
    limit.forEach(word -> words.add(word.asText()));
    return words.stream().collect(Collectors.joining(", "));
  }
}
