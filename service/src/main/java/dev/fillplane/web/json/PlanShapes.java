package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializerProvider;
import dev.fillplane.depth.Contours;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Shapes on plan, as GeoJSON in the local grid of the caller (RFC 7946). */
final class PlanShapes {

  private PlanShapes() {}

  static void position(Position value, Unit plan, JsonGenerator out) throws IOException {
    out.writeStartArray();
    QuantityWriter.writeNumber(plan.fromSi(value.x()), out);
    QuantityWriter.writeNumber(plan.fromSi(value.y()), out);
    out.writeEndArray();
  }

  static Position position(JsonNode tree, Unit plan) {
    return new Position(plan.toSi(tree.get(0).doubleValue()), plan.toSi(tree.get(1).doubleValue()));
  }

  static void outline(Outline value, JsonGenerator out, SerializerProvider provider)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("type", "Polygon");
    provider.defaultSerializeField("coordinates", value.rings(), out);
    out.writeEndObject();
  }

  static Outline outline(JsonNode tree, Unit plan) {
    List<List<Position>> rings = new ArrayList<>();
    for (JsonNode ring : tree.get("coordinates")) {
      List<Position> positions = new ArrayList<>();
      ring.forEach(position -> positions.add(position(position, plan)));
      rings.add(positions);
    }
    return new Outline(rings);
  }

  static void contours(
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
}
