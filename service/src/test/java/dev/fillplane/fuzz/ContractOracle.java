package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.path.PathType;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says whether a value fits a schema that stands somewhere in the contract. */
final class ContractOracle {

  private static final String IRI = "urn:fillplane:fuzzed-contract";

  private final SchemaRegistry registry;

  ContractOracle(JsonNode document) {
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder()
            .formatAssertionsEnabled(true)
            .pathType(PathType.JSON_POINTER)
            .build();
    registry =
        SchemaRegistry.withDialect(
            Dialects.getOpenApi30(),
            builder ->
                builder.schemaRegistryConfig(config).schemas(Map.of(IRI, document.toString())));
  }

  /** The first things that do not fit; empty if all does. */
  String misfits(String place, JsonNode value) {
    List<Error> errors = registry.getSchema(SchemaLocation.of(IRI + place)).validate(value);
    return errors.stream().limit(3).map(Error::toString).collect(Collectors.joining("; "));
  }

  boolean fits(String schema, JsonNode value) {
    return misfits("#/components/schemas/" + schema, value).isEmpty();
  }
}
