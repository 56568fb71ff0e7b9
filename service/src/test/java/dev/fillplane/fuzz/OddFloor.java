package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Trees;
import java.util.function.DoubleBinaryOperator;

/** Plan requests, metric, of one or more rooms of any outline over a grid of readings. */
final class OddFloor {

  private OddFloor() {}

  /** One room "a" with readings each half metre from (0, 0) to (6, 4). */
  static ObjectNode room(String polygon) {
    return at(0, 0, polygon);
  }

  /** The same with the readings moved. */
  static ObjectNode at(double x, double y, String polygon) {
    ObjectNode request = Trees.of("{'units':'metric','rooms':[],'survey':{'elevations':[]}}");
    add(request, "a", polygon);
    read(request, x, y, 0.5, (east, north) -> -5 + 2 * Math.sin(east) + north);
    return request;
  }

  /** One more room. */
  static ObjectNode add(ObjectNode request, String id, String polygon) {
    ObjectNode room = request.withArray("rooms").addObject().put("id", id);
    room.set("outline", Trees.of("{'type':'Polygon','coordinates':" + polygon + "}"));
    return request;
  }

  /** More readings on 13 by 9 places of a grid, of an elevation by the place in it. */
  static void read(
      ObjectNode request, double x, double y, double step, DoubleBinaryOperator elevation) {
    for (int row = 0; row < 9; row++) {
      for (int column = 0; column < 13; column++) {
        double height = elevation.applyAsDouble(step * column, step * row);
        reading(request, x + step * column, y + step * row, height);
      }
    }
  }

  static void reading(ObjectNode request, double x, double y, double elevation) {
    ArrayNode points = (ArrayNode) request.at("/survey/elevations");
    points
        .addObject()
        .put("point", "p" + (points.size() + 1))
        .put("x", x)
        .put("y", y)
        .put("elevation", elevation);
  }
}
