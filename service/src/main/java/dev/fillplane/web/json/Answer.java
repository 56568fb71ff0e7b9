package dev.fillplane.web.json;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An answer as it goes out: the units, the UCUM code of each dimension, then the parts of the body.
 */
public record Answer(UnitSystem units, Map<String, String> unitCodes, @JsonUnwrapped Object body) {

  private static final Map<String, String> METRIC = unitCodes(UnitSystem.METRIC);
  private static final Map<String, String> US = unitCodes(UnitSystem.US);

  /** {@code body} in {@code units}. */
  public static Answer of(UnitSystem units, Object body) {
    return new Answer(units, units == UnitSystem.METRIC ? METRIC : US, body);
  }

  /** UCUM codes by the name of their dimension. */
  public static Map<String, String> unitCodes(UnitSystem units) {
    Map<String, String> codes = new LinkedHashMap<>();
    for (Dimension dimension : Dimension.values()) {
      codes.put(Words.property(dimension), dimension.unit(units).code());
    }
    return Collections.unmodifiableMap(codes);
  }
}
