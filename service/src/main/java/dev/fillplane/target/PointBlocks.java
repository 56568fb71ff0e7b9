package dev.fillplane.target;

/**
 * High points in blocks of neighbours, of each of which is known how high it stands over a plane at
 * most. So a few points are looked at where all would have to be.
 */
final class PointBlocks {

  /** Points of a block; they follow each other along the rows of the sampled floor. */
  private static final int SIZE = 16;

  /** Rounding of a bound, m. */
  private static final double ROUNDING = 1e-9;

  private final int points;
  private final double[] west;
  private final double[] east;
  private final double[] south;
  private final double[] north;
  private final double[] top;

  PointBlocks(double[] x, double[] y, double[] elevation) {
    points = x.length;
    int blocks = (points + SIZE - 1) / SIZE;
    west = new double[blocks];
    east = new double[blocks];
    south = new double[blocks];
    north = new double[blocks];
    top = new double[blocks];
    for (int block = 0; block < blocks; block++) {
      int first = first(block);
      west[block] = least(x, first, end(block));
      east[block] = most(x, first, end(block));
      south[block] = least(y, first, end(block));
      north[block] = most(y, first, end(block));
      top[block] = most(elevation, first, end(block));
    }
  }

  private static double least(double[] values, int from, int to) {
    double least = values[from];
    for (int i = from + 1; i < to; i++) {
      least = Math.min(least, values[i]);
    }
    return least;
  }

  private static double most(double[] values, int from, int to) {
    double most = values[from];
    for (int i = from + 1; i < to; i++) {
      most = Math.max(most, values[i]);
    }
    return most;
  }

  int count() {
    return top.length;
  }

  int first(int block) {
    return block * SIZE;
  }

  /** The point after its last one. */
  int end(int block) {
    return Math.min(points, first(block) + SIZE);
  }

  /** No point of a block stands higher over a plane. */
  double bound(int block, Plane plane) {
    double x = plane.slopeX() > 0 ? west[block] : east[block];
    double y = plane.slopeY() > 0 ? south[block] : north[block];
    return top[block] - plane.at(x, y) + ROUNDING;
  }

  /** The block that may hold the highest point over a plane. */
  int likeliest(Plane plane) {
    int likeliest = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int block = 0; block < count(); block++) {
      double bound = bound(block, plane);
      if (bound > most) {
        most = bound;
        likeliest = block;
      }
    }
    return likeliest;
  }
}
