package dev.fillplane.safety;

import dev.fillplane.finding.Values;
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

  /** A note without a number; its sentence mentions the pairs {@code name, value, ...}. */
  static Note of(String code, Severity severity, String basis, Object... namesAndValues) {
    return new Note(
        code, severity, Values.byName(namesAndValues), Optional.empty(), Optional.empty(), basis);
  }

  /** The same with the number computed for this job. */
  Note valued(Amount number) {
    return new Note(code, severity, with("value", number), Optional.of(number), limit, basis);
  }

  /** The same with what the number is held against. */
  Note limited(Amount bound) {
    return new Note(code, severity, with("limit", bound), value, Optional.of(bound), basis);
  }

  private Map<String, Object> with(String name, Amount amount) {
    Map<String, Object> more = new LinkedHashMap<>(values);
    more.put(name, amount);
    return more;
  }
}
