package dev.fillplane.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A statement of an answer, such as a reason of a verdict; its sentence is made at the edge.
 *
 * @param code stable name in kebab case
 * @param values what the sentence mentions, as in {@link Finding#values()}
 */
public record Remark(String code, Map<String, Object> values) {

  /** Copies the values. */
  public Remark {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A remark with the pairs {@code name, value, ...}. */
  public static Remark of(String code, Object... namesAndValues) {
    return new Remark(code, Values.byName(namesAndValues));
  }
}
