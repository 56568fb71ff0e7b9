package dev.fillplane.target;

import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a target has to cover: all points of the sampled floor that can be its highest over any
 * plane, and the readings that lie in a room, which may stand above the floor between them.
 */
public final class HighPoints {

  private final FloorSample floor;
  private final double[] x;
  private final double[] y;
  private final double[] elevation;
  private final String[] names;

  private HighPoints(
      FloorSample floor, double[] x, double[] y, double[] elevation, String[] names) {
    this.floor = floor;
    this.x = x;
    this.y = y;
    this.elevation = elevation;
    this.names = names;
  }

  /**
   * Readings first, then the floor.
   *
   * @param names one for each reading
   */
  public static HighPoints of(FloorSample floor, Spots readings, List<String> names) {
    FloorPoints points = floor.points();
    int[] inside = inside(floor, readings);
    double[] x = new double[inside.length + points.count()];
    double[] y = new double[x.length];
    double[] elevation = new double[x.length];
    String[] kept = new String[inside.length];
    for (int i = 0; i < inside.length; i++) {
      x[i] = readings.x()[inside[i]];
      y[i] = readings.y()[inside[i]];
      elevation[i] = readings.elevation()[inside[i]];
      kept[i] = names.get(inside[i]);
    }
    System.arraycopy(points.x(), 0, x, inside.length, points.count());
    System.arraycopy(points.y(), 0, y, inside.length, points.count());
    System.arraycopy(points.elevation(), 0, elevation, inside.length, points.count());
    return new HighPoints(floor, x, y, elevation, kept);
  }

  private static int[] inside(FloorSample floor, Spots readings) {
    int[] inside = new int[readings.count()];
    int n = 0;
    for (int i = 0; i < readings.count(); i++) {
      if (floor.covers(readings.x()[i], readings.y()[i])) {
        inside[n++] = i;
      }
    }
    return Arrays.copyOf(inside, n);
  }

  FloorSample floor() {
    return floor;
  }

  int count() {
    return x.length;
  }

  double x(int i) {
    return x[i];
  }

  double y(int i) {
    return y[i];
  }

  double elevation(int i) {
    return elevation[i];
  }

  /** The name of the reading, if it is one. */
  Optional<String> name(int i) {
    return i < names.length ? Optional.of(names[i]) : Optional.empty();
  }

  /** Which is the highest above a plane; the first of several. */
  int highestOver(Plane plane) {
    int highest = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double height = elevation[i] - plane.at(x[i], y[i]);
      if (height > most) {
        most = height;
        highest = i;
      }
    }
    return highest;
  }
}
