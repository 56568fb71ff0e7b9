package dev.fillplane.surface;

/**
 * Area of a ring and integral of a linear depth over it, position by position, as a fan of
 * triangles from its first one. For one thread.
 */
final class Fan {

  private int size;
  private double firstX;
  private double firstY;
  private double firstDepth;
  private double lastX;
  private double lastY;
  private double lastDepth;
  private double twice;
  private double six;

  /** Starts anew. */
  void begin() {
    size = 0;
    twice = 0;
    six = 0;
  }

  void add(double x, double y, double depth) {
    if (size == 0) {
      firstX = x;
      firstY = y;
      firstDepth = depth;
    } else if (size > 1) {
      double part = (lastX - firstX) * (y - firstY) - (x - firstX) * (lastY - firstY);
      twice += part;
      six += part * (firstDepth + lastDepth + depth);
    }
    lastX = x;
    lastY = y;
    lastDepth = depth;
    size++;
  }

  /**
   * Starts anew with the part of a ring in which the depth is not negative: clipped as {@link
   * RingBuffer} does, but summed on the way and not kept.
   */
  void addFilled(double[] x, double[] y, double[] depth, int ringSize) {
    begin();
    for (int i = 0; i < ringSize; i++) {
      int next = i + 1 < ringSize ? i + 1 : 0;
      if (depth[i] >= 0) {
        add(x[i], y[i], depth[i]);
      }
      if (depth[i] >= 0 != depth[next] >= 0) {
        double share = depth[i] / (depth[i] - depth[next]);
        add(x[i] + share * (x[next] - x[i]), y[i] + share * (y[next] - y[i]), 0);
      }
    }
  }

  /** Signed area. */
  double area() {
    return twice / 2;
  }

  /** Integral of the depth. */
  double volume() {
    return six / 6;
  }
}
