package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.Unit;
import java.io.IOException;
import java.math.BigDecimal;

/** Writes a price for one unit as a decimal string. */
final class PriceWriter extends StdSerializer<Double> {

  private static final long serialVersionUID = 1;

  private final transient Unit unit;

  PriceWriter(Unit unit) {
    super(Double.class);
    this.unit = unit;
  }

  @Override
  public void serialize(Double value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeString(BigDecimal.valueOf(Rounding.toWire(unit.fromSi(value))).toPlainString());
  }
}
