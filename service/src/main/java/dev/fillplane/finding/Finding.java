package dev.fillplane.finding;

import dev.fillplane.quantity.Amount;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One thing that is wrong (an error) or odd (a warning) about a request.
 *
 * @param code stable name in kebab case; the sentence for it lives at the edge
 * @param error whether it prevents an answer
 * @param place what in the request caused it
 * @param values the values that its sentence mentions: {@link String}, {@link Integer} or {@link
 *     Amount}, by name, in order
 */
public record Finding(String code, boolean error, Place place, Map<String, Object> values) {

  /** Copies the values. */
  public Finding {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  static Finding of(String code, boolean error, Place place, Object... namesAndValues) {
    return new Finding(code, error, place, Values.byName(namesAndValues));
  }

  /** The same where its request is the property {@code name} of another. */
  public Finding under(String name) {
    return new Finding(code, error, place.under(name), values);
  }
}
