package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import dev.fillplane.quantity.Unit;
import java.io.IOException;

/** Reads a price, a decimal string, for one unit. */
final class PriceReader extends StdDeserializer<Double> {

  private static final long serialVersionUID = 1;

  private final transient Unit unit;

  PriceReader(Unit unit) {
    super(Double.class);
    this.unit = unit;
  }

  @Override
  public Double deserialize(JsonParser in, DeserializationContext context) throws IOException {
    if (in.currentToken() != JsonToken.VALUE_STRING) {
      context.reportInputMismatch(Double.class, "not a decimal string");
    }
    return unit.toSi(Double.parseDouble(in.getText()));
  }
}
