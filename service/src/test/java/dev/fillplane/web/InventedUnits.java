package dev.fillplane.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Plan requests of invented small units, by a seed; every third in US units. */
final class InventedUnits {

  private static final double FOOT = 0.3048;
  private static final double INCH_MM = 25.4;

  private InventedUnits() {}

  static List<ObjectNode> make(int count, long seed) {
    Random random = new Random(seed);
    return IntStream.rangeClosed(1, count).mapToObj(number -> unit(number, random)).toList();
  }

  private static ObjectNode unit(int number, Random random) {
    boolean us = number % 3 == 0;
    double length = us ? FOOT : 1;
    double width = (2 + 2 * random.nextDouble()) / length;
    double depth = (1.5 + random.nextDouble()) / length;
    ObjectNode unit = JsonNodeFactory.instance.objectNode();
    unit.put("units", us ? "us" : "metric").put("reference", "unit " + number + " (invented)");
    ObjectNode room = unit.putArray("rooms").addObject().put("id", "room");
    ArrayNode ring =
        room.putObject("outline").put("type", "Polygon").putArray("coordinates").addArray();
    for (double[] corner :
        new double[][] {{0, 0}, {width, 0}, {width, depth}, {0, depth}, {0, 0}}) {
      ring.addArray().add(corner[0]).add(corner[1]);
    }
    ArrayNode points = unit.putObject("survey").putArray("elevations");
    for (int i = 0; i < 6; i++) {
      points
          .addObject()
          .put("point", "p" + i)
          .put("x", width * (0.1 + 0.4 * (i % 3)))
          .put("y", depth * (0.2 + 0.6 * (i / 3)))
          .put("elevation", -12 * random.nextDouble() / (us ? INCH_MM : 1));
    }
    unit.putObject("grid").put("cell", 0.25 / length);
    return unit;
  }
}
