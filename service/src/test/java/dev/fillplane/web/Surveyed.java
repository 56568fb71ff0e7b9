package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.function.DoubleBinaryOperator;

/** Requests of one rectangular room "a" with elevations, in the units that they name. */
final class Surveyed {

  private Surveyed() {}

  /** A room from (0, 0) without any reading. */
  static ObjectNode room(String units, double width, double length) {
    String outline = "[[[0,0],[%1$s,0],[%1$s,%2$s],[0,%2$s],[0,0]]]".formatted(width, length);
    ObjectNode request =
        (ObjectNode)
            Refusals.tree(
                "{'rooms':[{'id':'a','outline':{'type':'Polygon','coordinates':"
                    + outline
                    + "}}],'survey':{'elevations':[]}}");
    return request.put("units", units);
  }

  /** A room read on a square grid, half a step from the walls. */
  static ObjectNode room(
      String units, double width, double length, double step, DoubleBinaryOperator elevation) {
    ObjectNode request = room(units, width, length);
    for (double y = step / 2; y < length; y += step) {
      for (double x = step / 2; x < width; x += step) {
        reading(request, "x" + x + "y" + y, x, y, elevation.applyAsDouble(x, y));
      }
    }
    return request;
  }

  static void reading(ObjectNode request, String point, double x, double y, double z) {
    ((ArrayNode) request.at("/survey/elevations"))
        .addObject()
        .put("point", point)
        .put("x", x)
        .put("y", y)
        .put("elevation", z);
  }

  /** The answer, which must be one. */
  static JsonPath plan(String path, ObjectNode request) {
    Response answer = RunningService.post(path, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }
}
