package dev.fillplane.fuzz;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Rings of positions as JSON texts. */
final class Rings {

  private Rings() {}

  /** A closed ring through x and y of each corner. */
  static String ring(double... corners) {
    double[] closed = Arrays.copyOf(corners, corners.length + 2);
    closed[corners.length] = corners[0];
    closed[corners.length + 1] = corners[1];
    return open(closed);
  }

  /** The same without its first position again. */
  static String open(double... corners) {
    StringBuilder ring = new StringBuilder("[");
    for (int i = 0; i < corners.length; i += 2) {
      ring.append(i == 0 ? "[" : ",[").append(corners[i]).append(',').append(corners[i + 1]);
      ring.append(']');
    }
    return ring.append(']').toString();
  }

  static String box(double x1, double y1, double x2, double y2) {
    return ring(x1, y1, x2, y1, x2, y2, x1, y2);
  }

  /** A ring about a place whose radius goes by the number of the corner. */
  static String round(double x, double y, int corners, IntToDoubleFunction radius) {
    double[] ring = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      ring[2 * i] = x + radius.applyAsDouble(i) * Math.cos(angle);
      ring[2 * i + 1] = y + radius.applyAsDouble(i) * Math.sin(angle);
    }
    return ring(ring);
  }

  /** A comb: teeth of a width and a length on a back. */
  static String comb(int teeth, double width, double length) {
    double[] up =
        DoubleStream.iterate(0, tooth -> tooth < teeth, tooth -> tooth + 1)
            .flatMap(
                tooth ->
                    DoubleStream.of(
                        2 * tooth * width,
                        length,
                        (2 * tooth + 1) * width,
                        length,
                        (2 * tooth + 1) * width,
                        0.5,
                        (2 * tooth + 2) * width,
                        0.5))
            .toArray();
    double[] back = {2 * teeth * width, 0, 0, 0};
    return ring(DoubleStream.concat(Arrays.stream(up), Arrays.stream(back)).toArray());
  }

  /** The coordinates of a polygon. */
  static String polygon(String... rings) {
    return Arrays.stream(rings).collect(Collectors.joining(",", "[", "]"));
  }
}
