package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;

/**
 * Plan requests of invented floors that make sense, in metric units: one to three rooms side by
 * side with doors between them, an exit, and readings on a waved and sloping floor.
 */
final class InventedFloors {

  private static final double WALL = 0.1;

  /** Corners in parts of the width and the length of a room; both walls to neighbours are whole. */
  private static final List<double[][]> SHAPES =
      List.of(
          new double[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}},
          new double[][] {{0, 0}, {0.5, 0}, {1, 0}, {1, 0.5}, {1, 1}, {0, 1}},
          new double[][] {{0, 0}, {1, 0}, {1, 0.8}, {0.6, 0.8}, {0.6, 1}, {0, 1}},
          new double[][] {{0, 0}, {1, 0}, {1, 0.75}, {0.8, 1}, {0.3, 0.9}, {0, 0.7}},
          new double[][] {
            {0, 0}, {1, 0}, {1, 1}, {0.7, 1}, {0.7, 0.8}, {0.3, 0.8}, {0.3, 1}, {0, 1}
          });

  private final Random random;
  private final ObjectNode request = JsonNodeFactory.instance.objectNode();
  private final Wave wave;
  private double from;

  private InventedFloors(Random random) {
    this.random = random;
    wave = Wave.of(random);
  }

  /** A floor that waves about a slope; elevations in mm, highest at about 0. */
  private record Wave(double slopeX, double slopeY, double height, double length, double phase) {

    static Wave of(Random random) {
      return new Wave(
          Chance.between(-3, 3, random),
          Chance.between(-3, 3, random),
          Chance.between(0, 12, random),
          Chance.between(1.5, 6, random),
          Chance.between(0, 6, random));
    }

    double at(double x, double y) {
      double turns = (x + 0.7 * y) / length + phase;
      return slopeX * x + slopeY * y - 20 + height * Math.sin(turns);
    }
  }

  /** Units, rooms and survey, nothing else. */
  static ObjectNode make(Random random) {
    return new InventedFloors(random).make();
  }

  private ObjectNode make() {
    request.put("units", "metric");
    int rooms = Chance.of(random, 1, 1, 2, 3);
    ArrayNode readings = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < rooms; i++) {
      room(i, i == rooms - 1, readings);
    }
    request.set("survey", new InventedSurvey(random).of(readings));
    return request;
  }

  private void room(int number, boolean last, ArrayNode readings) {
    double width = round(Chance.between(1.5, 5, random));
    double length = round(Chance.between(2, 5, random));
    ObjectNode room = request.withArray("rooms").addObject().put("id", "room " + (number + 1));
    ArrayNode rings = room.putObject("outline").put("type", "Polygon").putArray("coordinates");
    ring(rings.addArray(), Chance.of(SHAPES, random), width, length);
    boolean column = Chance.oneIn(4, random);
    if (column) {
      column(rings.addArray(), from + width / 2, length * 0.4);
    }
    openings(room, number, last, width);
    read(readings, width, length);
    from = round(from + width + WALL);
  }

  private void ring(ArrayNode ring, double[][] shape, double width, double length) {
    for (int i = 0; i <= shape.length; i++) {
      double[] corner = shape[i % shape.length];
      ring.addArray().add(round(from + corner[0] * width)).add(round(corner[1] * length));
    }
  }

  private static void column(ArrayNode ring, double x, double y) {
    double half = 0.15;
    for (double[] corner :
        new double[][] {{-half, -half}, {-half, half}, {half, half}, {half, -half}}) {
      ring.addArray().add(round(x + corner[0])).add(round(y + corner[1]));
    }
    ring.add(ring.get(0).deepCopy());
  }

  private void openings(ObjectNode room, int number, boolean last, double width) {
    ArrayNode openings = room.putArray("openings");
    if (number == 0 && !Chance.oneIn(5, random)) {
      ends(openings, "way out", from + 0.2, 0, from + 1.1, 0).put("kind", "exit");
    }
    if (!last) {
      double x = round(from + width);
      ends(openings, "door " + (number + 1), x, 0.2, x, 1.0)
          .put("kind", "doorway")
          .put("into", "room " + (number + 2));
    }
  }

  private static ObjectNode ends(
      ArrayNode openings, String id, double x, double y, double toX, double toY) {
    ObjectNode opening = openings.addObject().put("id", id);
    opening.putArray("from").add(round(x)).add(y);
    opening.putArray("to").add(round(toX)).add(toY);
    return opening;
  }

  private void read(ArrayNode readings, double width, double length) {
    double step = Chance.between(0.5, 1.4, random);
    for (double y = 0.2; y < 0.7 * length; y += step) {
      for (double x = 0.2; x < width; x += step) {
        double toX = round(from + x + Chance.between(-0.1, 0.1, random));
        double toY = round(y + Chance.between(-0.1, 0.1, random));
        double noise = Chance.between(-0.8, 0.8, random);
        readings
            .addObject()
            .put("point", "p" + (readings.size() + 1))
            .put("x", toX)
            .put("y", toY)
            .put("elevation", Math.round(10 * (wave.at(toX, toY) + noise)) / 10.0);
      }
    }
  }

  private static double round(double metres) {
    return Math.round(1000 * metres) / 1000.0;
  }
}
