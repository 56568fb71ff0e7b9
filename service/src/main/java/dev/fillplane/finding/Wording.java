package dev.fillplane.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A text of an answer that is told without its code, such as the description of a line; its
 * sentence is made at the edge.
 *
 * @param code stable name in kebab case
 * @param values what the sentence mentions, as in {@link Finding#values()}
 */
public record Wording(String code, Map<String, Object> values) {

  /** Copies the values. */
  public Wording {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A text with the pairs {@code name, value, ...}. */
  public static Wording of(String code, Object... namesAndValues) {
    return new Wording(code, Values.byName(namesAndValues));
  }
}
