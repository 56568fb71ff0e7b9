package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Something of this job that can hurt somebody; its sentence is made at the edge.
 *
 * @param code stable name in kebab case
 * @param severity how grave it is
 * @param values what the sentence mentions, as in {@link dev.fillplane.finding.Finding#values()}
 * @param value the number computed for this job, if there is one
 * @param limit what it is held against, if there is one
 * @param basis where the limit or the rule comes from
 */
public record Note(
    String code,
    Severity severity,
    Map<String, Object> values,
    Optional<Amount> value,
    Optional<Amount> limit,
    String basis) {

  /** Copies the values. */
  public Note {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }
}
