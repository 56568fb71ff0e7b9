package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.POJONode;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import dev.fillplane.depth.Contours;
import dev.fillplane.depth.Grid;
import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import dev.fillplane.pour.Change;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.safety.Note;
import dev.fillplane.surface.Deviations;
import dev.fillplane.survey.Column;
import dev.fillplane.survey.Table;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The few values whose shape on the wire is not that of their record. */
final class WireModule extends SimpleModule {

  private static final long serialVersionUID = 1;

  WireModule(UnitSystem system) {
    super("fillplane");
    Unit plan = Dimension.PLAN.unit(system);
    write(Double.class, (value, out, provider) -> QuantityWriter.writeNumber(value, out));
    write(double.class, (value, out, provider) -> QuantityWriter.writeNumber(value, out));
    write(Position.class, (value, out, provider) -> position(value, plan, out));
    write(Outline.class, WireModule::outline);
    write(Contours.class, (value, out, provider) -> contours(value, system, out, provider));
    write(Grid.class, (value, out, provider) -> grid(value, system, out));
    write(Deviations.class, (value, out, provider) -> deviations(value, system, out));
    write(Amount.class, (value, out, provider) -> amount(value, system, out));
    write(Finding.class, (value, out, provider) -> finding(value, system, out));
    write(Remark.class, (value, out, provider) -> remark(value, system, out));
    write(Change.class, (value, out, provider) -> change(value, system, out));
    write(Note.class, (value, out, provider) -> note(value, system, out, provider));
    read(Position.class, tree -> position(tree, plan));
    read(Outline.class, tree -> outline(tree, plan));
    read(Table.class, tree -> table(tree, system));
  }

  private static void position(Position value, Unit plan, JsonGenerator out) throws IOException {
    out.writeStartArray();
    QuantityWriter.writeNumber(plan.fromSi(value.x()), out);
    QuantityWriter.writeNumber(plan.fromSi(value.y()), out);
    out.writeEndArray();
  }

  private static Position position(JsonNode tree, Unit plan) {
    return new Position(plan.toSi(tree.get(0).doubleValue()), plan.toSi(tree.get(1).doubleValue()));
  }

  private static void outline(Outline value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("type", "Polygon");
    provider.defaultSerializeField("coordinates", value.rings(), out);
    out.writeEndObject();
  }

  private static Outline outline(JsonNode tree, Unit plan) {
    List<List<Position>> rings = new ArrayList<>();
    for (JsonNode ring : tree.get("coordinates")) {
      List<Position> positions = new ArrayList<>();
      ring.forEach(position -> positions.add(position(position, plan)));
      rings.add(positions);
    }
    return new Outline(rings);
  }

  private static void contours(
      Contours value, UnitSystem system, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    Unit height = Dimension.HEIGHT.unit(system);
    out.writeStartObject();
    out.writeStringField("type", "FeatureCollection");
    out.writeArrayFieldStart("features");
    for (var contour : value.contours()) {
      out.writeStartObject();
      out.writeStringField("type", "Feature");
      out.writeObjectFieldStart("properties");
      out.writeFieldName("depth");
      QuantityWriter.writeNumber(height.fromSi(contour.depth()), out);
      out.writeEndObject();
      out.writeObjectFieldStart("geometry");
      out.writeStringField("type", "MultiLineString");
      provider.defaultSerializeField("coordinates", contour.lines(), out);
      out.writeEndObject();
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void grid(Grid value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    frame(value.originX(), value.originY(), value.cell(), system, out);
    out.writeNumberField("columns", value.columns());
    out.writeNumberField("rows", value.rows());
    heights("depths", value.depths(), Grid.OUTSIDE, system, out);
    out.writeEndObject();
  }

  private static void deviations(Deviations value, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    frame(value.originX(), value.originY(), value.cell(), system, out);
    out.writeNumberField("columns", value.columns());
    out.writeNumberField("rows", value.rows());
    heights("deviations", value.deviations(), Deviations.OUTSIDE, system, out);
    out.writeEndObject();
  }

  private static void frame(
      double originX, double originY, double cell, UnitSystem system, JsonGenerator out)
      throws IOException {
    Unit plan = Dimension.PLAN.unit(system);
    out.writeFieldName("originX");
    QuantityWriter.writeNumber(plan.fromSi(originX), out);
    out.writeFieldName("originY");
    QuantityWriter.writeNumber(plan.fromSi(originY), out);
    out.writeFieldName("cell");
    QuantityWriter.writeNumber(plan.fromSi(cell), out);
  }

  /** Heights of cells go out to 0.01 mm or 0.0001 in, and -1 marks a cell outside every room. */
  private static void heights(
      String name, double[] values, double outside, UnitSystem system, JsonGenerator out)
      throws IOException {
    Unit height = Dimension.HEIGHT.unit(system);
    int decimals = system == UnitSystem.METRIC ? 2 : 4;
    out.writeNumberField("outside", -1);
    out.writeArrayFieldStart(name);
    for (double value : values) {
      double shown = value == outside ? -1 : Rounding.toDecimals(height.fromSi(value), decimals);
      QuantityWriter.writeNumber(shown, out);
    }
    out.writeEndArray();
  }

  private static void amount(Amount value, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    out.writeFieldName("value");
    QuantityWriter.writeNumber(value.in(system), out);
    out.writeStringField("unit", value.dimension().unit(system).code());
    out.writeEndObject();
  }

  private static void finding(Finding value, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("code", value.code());
    out.writeStringField("detail", Sentences.of(value.code(), value.values(), system));
    out.writeStringField("pointer", value.place().toString());
    out.writeEndObject();
  }

  private static void remark(Remark value, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    coded(value.code(), value.values(), system, out);
    out.writeEndObject();
  }

  private static void change(Change value, UnitSystem system, JsonGenerator out)
      throws IOException {
    out.writeStartObject();
    coded(value.remark().code(), value.remark().values(), system, out);
    out.writeStringField("verdict", Words.of(value.verdict()));
    out.writeEndObject();
  }

  private static void note(
      Note value, UnitSystem system, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeStartObject();
    coded(value.code(), value.values(), system, out);
    out.writeStringField("severity", Words.of(value.severity()));
    optional("value", value.value(), out, provider);
    optional("limit", value.limit(), out, provider);
    out.writeStringField("basis", value.basis());
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

  private static Table table(JsonNode tree, UnitSystem system) {
    List<Column> columns = new ArrayList<>();
    for (JsonNode column : tree.get("columns")) {
      for (Column candidate : Column.values()) {
        if (Words.of(candidate).equals(column.textValue())) {
          columns.add(candidate);
        }
      }
    }
    double[] values = numbers(tree.get("values"));
    Unit[] units =
        columns.stream().map(column -> column.dimension().unit(system)).toArray(Unit[]::new);
    for (int i = 0; i < values.length; i++) {
      values[i] = units[i % units.length].toSi(values[i]);
    }
    return new Table(columns, values);
  }

  private static double[] numbers(JsonNode told) {
    if (told.isPojo()) {
      TableValues values = (TableValues) ((POJONode) told).getPojo();
      double[] numbers = new double[values.count()];
      Arrays.setAll(numbers, values::number);
      return numbers;
    }
    double[] numbers = new double[told.size()];
    Arrays.setAll(numbers, i -> told.get(i).doubleValue());
    return numbers;
  }

  private <T> void write(Class<T> type, Writer<T> writer) {
    addSerializer(type, new Writing<>(type, writer));
  }

  private <T> void read(Class<T> type, Reader<T> reader) {
    addDeserializer(type, new Reading<>(type, reader));
  }

  private interface Writer<T> {
    void write(T value, JsonGenerator out, SerializerProvider provider) throws IOException;
  }

  private interface Reader<T> {
    T read(JsonNode tree);
  }

  private static final class Writing<T> extends StdSerializer<T> {

    private static final long serialVersionUID = 1;

    private final transient Writer<T> writer;

    Writing(Class<T> type, Writer<T> writer) {
      super(type);
      this.writer = writer;
    }

    @Override
    public void serialize(T value, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      writer.write(value, out, provider);
    }
  }

  private static final class Reading<T> extends StdDeserializer<T> {

    private static final long serialVersionUID = 1;

    private final transient Reader<T> reader;

    Reading(Class<T> type, Reader<T> reader) {
      super(type);
      this.reader = reader;
    }

    @Override
    public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
      return reader.read(context.readTree(in));
    }
  }
}
