package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.Unit;
import java.io.IOException;
import java.util.OptionalDouble;

/** Writes a number, an optional number or an array of numbers in one unit. */
final class QuantityWriter extends StdSerializer<Object> {

  private static final long serialVersionUID = 1;

  private final transient Unit unit;

  QuantityWriter(Unit unit) {
    super(Object.class);
    this.unit = unit;
  }

  @Override
  public void serialize(Object value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    if (value instanceof double[] numbers) {
      out.writeStartArray();
      for (double number : numbers) {
        write(number, out);
      }
      out.writeEndArray();
    } else if (value instanceof OptionalDouble number) {
      write(number.orElseThrow(), out);
    } else {
      write((Double) value, out);
    }
  }

  @Override
  public boolean isEmpty(SerializerProvider provider, Object value) {
    return value instanceof OptionalDouble number && number.isEmpty();
  }

  private void write(double si, JsonGenerator out) throws IOException {
    writeNumber(unit.fromSi(si), out);
  }

  /** Writes a number to the digits of the wire; whole numbers without a point. */
  static void writeNumber(double value, JsonGenerator out) throws IOException {
    if (!Double.isFinite(value)) {
      throw new IllegalStateException("a number of the answer is not finite");
    }
    if (out.canWriteFormattedNumbers() && PlainNumber.write(value, out)) {
      return;
    }
    double rounded = Rounding.toWire(value);
    if (rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15) {
      out.writeNumber((long) rounded);
    } else {
      out.writeNumber(rounded);
    }
  }
}
