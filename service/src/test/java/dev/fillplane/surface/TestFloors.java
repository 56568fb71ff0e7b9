package dev.fillplane.surface;

import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/** Rooms and floors for tests; all of them invented. */
public final class TestFloors {

  /** An L of 6 x 4 m with 3 x 2 m missing. */
  public static final double[] L_ROOM = {0, 0, 6, 0, 6, 2, 3, 2, 3, 4, 0, 4};

  public static final double[] RECTANGLE = {0, 0, 6, 0, 6, 4, 0, 4};

  public static final double[] TRIANGLE = {0, 0, 4, 0, 0, 3};

  /** An island of 1.1 x 0.7 m, for the rectangle and the L. */
  public static final double[] ISLAND = {0.9, 0.8, 2.0, 0.8, 2.0, 1.5, 0.9, 1.5};

  private TestFloors() {}

  /** A room from the coordinates of its rings, none closed. */
  public static Room room(String id, double[]... rings) {
    List<List<Position>> closed = new ArrayList<>();
    for (double[] ring : rings) {
      List<Position> positions = new ArrayList<>();
      for (int i = 0; i <= ring.length; i += 2) {
        positions.add(new Position(ring[i % ring.length], ring[i % ring.length + 1]));
      }
      closed.add(positions);
    }
    return new Room(
        id, new Outline(closed), Optional.empty(), null, OptionalInt.empty(), List.of());
  }

  public static Room room(Polygon polygon) {
    return room("part", coordinates(polygon));
  }

  private static double[] coordinates(Polygon polygon) {
    var shell = polygon.getExteriorRing().getCoordinates();
    double[] ring = new double[2 * shell.length - 2];
    for (int i = 0; i < shell.length - 1; i++) {
      ring[2 * i] = shell[i].x;
      ring[2 * i + 1] = shell[i].y;
    }
    return ring;
  }

  /** A ring turned about the origin, then shifted. */
  public static double[] moved(double[] ring, double angle, double shiftX, double shiftY) {
    double[] moved = new double[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      moved[i] = Math.cos(angle) * ring[i] - Math.sin(angle) * ring[i + 1] + shiftX;
      moved[i + 1] = Math.sin(angle) * ring[i] + Math.cos(angle) * ring[i + 1] + shiftY;
    }
    return moved;
  }

  /** A crooked room of 5 to 12 corners around (3, 2). */
  public static double[] crooked(Random random) {
    int corners = 5 + random.nextInt(8);
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double radius = 1 + 2.5 * random.nextDouble();
      ring[2 * i] = 3 + radius * Math.cos(angle);
      ring[2 * i + 1] = 2 + radius * Math.sin(angle);
    }
    return ring;
  }

  /** A floor with waves of some millimetres. */
  public static double waves(double x, double y) {
    return 0.004 * Math.sin(1.3 * x + 0.4) * Math.cos(0.9 * y) + 0.002 * Math.sin(0.7 * (x + y));
  }

  public static Surface surface(DoubleBinaryOperator elevation) {
    return new Surface() {
      @Override
      public double elevation(double x, double y) {
        return elevation.applyAsDouble(x, y);
      }

      @Override
      public double deviation(double x, double y) {
        return 0.001;
      }
    };
  }

  public static FloorSample sample(DoubleBinaryOperator elevation, double cell, Room... rooms) {
    return FloorSample.of(List.of(rooms), surface(elevation), cell);
  }
}
