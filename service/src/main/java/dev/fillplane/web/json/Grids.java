package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.fillplane.depth.Grid;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.surface.Deviations;
import java.io.IOException;

/** Numbers on square cells, with {@code -1} outside every room. */
final class Grids {

  private Grids() {}

  static void grid(Grid value, UnitSystem system, JsonGenerator out) throws IOException {
    out.writeStartObject();
    frame(value.originX(), value.originY(), value.cell(), system, out);
    out.writeNumberField("columns", value.columns());
    out.writeNumberField("rows", value.rows());
    heights("depths", value.depths(), Grid.OUTSIDE, system, out);
    out.writeEndObject();
  }

  static void deviations(Deviations value, UnitSystem system, JsonGenerator out)
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
}
