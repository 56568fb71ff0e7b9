package dev.fillplane.finding;

import dev.fillplane.quantity.Amount;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names and values of a sentence, in order. */
public final class Values {

  private Values() {}

  /**
   * The pairs {@code name, value, name, value, ...} as a map in that order.
   *
   * @throws IllegalArgumentException if a name is no string or a value is neither a string, an
   *     integer nor an amount
   */
  public static Map<String, Object> byName(Object... namesAndValues) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      Object value = namesAndValues[i + 1];
      if (!(value instanceof String || value instanceof Integer || value instanceof Amount)) {
        throw new IllegalArgumentException("not a value of a sentence: " + value);
      }
      values.put((String) namesAndValues[i], value);
    }
    return values;
  }
}
