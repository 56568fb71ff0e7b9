package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import dev.fillplane.depth.Contours;
import dev.fillplane.depth.Grid;
import dev.fillplane.estimate.Measure;
import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import dev.fillplane.finding.Wording;
import dev.fillplane.pour.Change;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Money;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.safety.Note;
import dev.fillplane.surface.Deviations;
import dev.fillplane.survey.Table;
import java.io.IOException;
import java.math.BigDecimal;

/** The few values whose shape on the wire is not that of their record. */
final class WireModule extends SimpleModule {

  private static final long serialVersionUID = 1;

  WireModule(UnitSystem system) {
    super("fillplane");
    Unit plan = Dimension.PLAN.unit(system);
    write(Double.class, (value, out, provider) -> QuantityWriter.writeNumber(value, out));
    write(double.class, (value, out, provider) -> QuantityWriter.writeNumber(value, out));
    write(Position.class, (value, out, provider) -> PlanShapes.position(value, plan, out));
    write(Outline.class, PlanShapes::outline);
    write(
        Contours.class,
        (value, out, provider) -> PlanShapes.contours(value, system, out, provider));
    write(Grid.class, (value, out, provider) -> Grids.grid(value, system, out));
    write(Deviations.class, (value, out, provider) -> Grids.deviations(value, system, out));
    write(Amount.class, (value, out, provider) -> Statements.amount(value, system, out));
    write(Finding.class, (value, out, provider) -> Statements.finding(value, system, out));
    write(Remark.class, (value, out, provider) -> Statements.remark(value, system, out));
    write(Change.class, (value, out, provider) -> Statements.change(value, system, out));
    write(Note.class, (value, out, provider) -> Statements.note(value, system, out, provider));
    write(Money.class, (value, out, provider) -> Statements.money(value, out));
    write(Measure.class, (value, out, provider) -> Statements.measure(value, out));
    write(Wording.class, (value, out, provider) -> Statements.wording(value, system, out));
    write(BigDecimal.class, (value, out, provider) -> out.writeString(value.toPlainString()));
    read(BigDecimal.class, tree -> new BigDecimal(tree.textValue()));
    read(Position.class, tree -> PlanShapes.position(tree, plan));
    read(Outline.class, tree -> PlanShapes.outline(tree, plan));
    read(Table.class, tree -> Tables.table(tree, system));
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
