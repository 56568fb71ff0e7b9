package dev.fillplane.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.openapitools.openapidiff.core.OpenApiCompare;
import org.openapitools.openapidiff.core.model.ChangedOpenApi;
import org.openapitools.openapidiff.core.model.ChangedOperation;

/**
 * What callers of one contract would trip over in another. Most is found by the library; {@link
 * Tightenings} finds what that one (2.0.1) lets through.
 */
final class BreakingChanges {

  private BreakingChanges() {}

  /** One sentence for each; empty if every caller of {@code released} is still served. */
  static List<String> between(JsonNode released, JsonNode present) throws IOException {
    List<String> breaks = new ArrayList<>(Tightenings.between(released, present));
    ChangedOpenApi changes = OpenApiCompare.fromContents(text(released), text(present));
    changes
        .getMissingEndpoints()
        .forEach(gone -> breaks.add(gone.getMethod() + " " + gone.getPathUrl() + " is gone."));
    changes.getChangedOperations().stream()
        .filter(ChangedOperation::isIncompatible)
        .forEach(
            changed ->
                breaks.add(changed.getHttpMethod() + " " + changed.getPathUrl() + " has changed."));
    if (breaks.isEmpty() && changes.isIncompatible()) {
      breaks.add("The contract as a whole has changed.");
    }
    return breaks;
  }

  private static String text(JsonNode contract) throws IOException {
    return ContractFiles.yaml(contract);
  }
}
