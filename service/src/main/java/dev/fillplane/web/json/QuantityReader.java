package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import dev.fillplane.quantity.Unit;
import java.io.IOException;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Reads a number of one unit. */
final class QuantityReader<T> extends StdDeserializer<T> {

  private static final long serialVersionUID = 1;

  private final transient Unit unit;
  private final transient DoubleFunction<T> wrap;
  private final transient T absent;

  private QuantityReader(Class<T> type, Unit unit, DoubleFunction<T> wrap, T absent) {
    super(type);
    this.unit = unit;
    this.wrap = wrap;
    this.absent = absent;
  }

  /** A reader of {@code unit} for a component of {@code type}. */
  static JsonDeserializer<?> of(Class<?> type, Unit unit) {
    if (type == OptionalDouble.class) {
      return new QuantityReader<>(
          OptionalDouble.class, unit, OptionalDouble::of, OptionalDouble.empty());
    }
    if (type == double[].class) {
      return new Numbers(unit);
    }
    return new QuantityReader<>(Double.class, unit, Double::valueOf, null);
  }

  @Override
  public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
    return wrap.apply(unit.toSi(number(in, context)));
  }

  @Override
  public T getNullValue(DeserializationContext context) {
    return absent;
  }

  @Override
  public Object getAbsentValue(DeserializationContext context) {
    return absent;
  }

  private static double number(JsonParser in, DeserializationContext context) throws IOException {
    if (!in.currentToken().isNumeric()) {
      context.reportInputMismatch(Double.class, "not a number");
    }
    return in.getDoubleValue();
  }

  private static final class Numbers extends StdDeserializer<double[]> {

    private static final long serialVersionUID = 1;

    private final transient Unit unit;

    Numbers(Unit unit) {
      super(double[].class);
      this.unit = unit;
    }

    @Override
    public double[] deserialize(JsonParser in, DeserializationContext context) throws IOException {
      double[] numbers = new double[64];
      int count = 0;
      while (in.nextToken() != JsonToken.END_ARRAY) {
        if (count == numbers.length) {
          numbers = Arrays.copyOf(numbers, 2 * count);
        }
        numbers[count++] = unit.toSi(number(in, context));
      }
      return Arrays.copyOf(numbers, count);
    }
  }
}
