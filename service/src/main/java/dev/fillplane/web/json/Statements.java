package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import dev.fillplane.estimate.Measure;
import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import dev.fillplane.finding.Wording;
import dev.fillplane.pour.Change;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Money;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.safety.Note;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;

/** What is said by a code: its sentence is made here, in the units of the caller. */
final class Statements {

  private Statements() {}

  static void amount(Amount value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeFieldName("value");
    QuantityWriter.writeNumber(value.in(system), out);
    out.writeStringField("unit", value.dimension().unit(system).code());
    out.writeEndObject();
  }

  static void measure(Measure value, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeFieldName("value");
    QuantityWriter.writeNumber(value.value().doubleValue(), out);
    out.writeStringField("unit", value.unit().code());
    out.writeEndObject();
  }

  static void wording(Wording value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeString(Sentences.of(value.code(), value.values(), system));
  }

  static void money(Money value, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("amount", value.amount().toPlainString());
    if (value.currency().isPresent()) {
      out.writeStringField("currency", value.currency().get());
    }
    out.writeEndObject();
  }

  static void finding(Finding value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("code", value.code());
    out.writeStringField("detail", Sentences.of(value.code(), value.values(), system));
    out.writeStringField("pointer", value.place().toString());
    out.writeEndObject();
  }

  static void remark(Remark value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    coded(value.code(), value.values(), system, out);
    out.writeEndObject();
  }

  static void change(Change value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    coded(value.remark().code(), value.remark().values(), system, out);
    out.writeStringField("verdict", Words.of(value.verdict()));
    out.writeEndObject();
  }

  static void note(Note value, UnitSystem system, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeStartObject();
    coded(value.code(), value.values(), system, out);
    out.writeStringField("severity", Words.of(value.severity()));
    optional("value", value.value(), out, provider);
    optional("limit", value.limit(), out, provider);
    out.writeStringField("basis", value.basis());
    out.writeArrayFieldStart("rooms");
    for (String room : value.rooms()) {
      out.writeString(room);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void coded(
      String code, Map<String, Object> values, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStringField("code", code);
    out.writeStringField("text", Sentences.of(code, values, system));
  }

  private static void optional(
      String name, Optional<Amount> value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    if (value.isPresent()) {
      provider.defaultSerializeField(name, value.get(), out);
    }
  }
}
