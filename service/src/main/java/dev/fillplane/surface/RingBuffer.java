package dev.fillplane.surface;

import java.util.Arrays;

/**
 * A {@link Ring} in the making, which is clipped again and again without new arrays: cutting a
 * floor by its cells takes some thousand clips. For one thread.
 *
 * <p>Clipping keeps half planes after Sutherland and Hodgman (Comm. ACM 17, 1974). Of a ring that
 * is not convex it may leave edges that run forth and back along the clipping line; they carry no
 * area, so that every signed integral over the ring stays exact.
 */
final class RingBuffer {

  private double[] x = new double[16];
  private double[] y = new double[16];
  private int size;

  void set(Ring ring) {
    size = ring.size();
    reserve(size);
    System.arraycopy(ring.x(), 0, x, 0, size);
    System.arraycopy(ring.y(), 0, y, 0, size);
  }

  private void reserve(int most) {
    if (x.length < most) {
      x = new double[2 * most];
      y = new double[2 * most];
    }
  }

  int size() {
    return size;
  }

  /** Its positions, of which {@link #size} count. */
  double[] x() {
    return x;
  }

  /** Its positions, of which {@link #size} count. */
  double[] y() {
    return y;
  }

  /** A copy that stays. */
  Ring ring() {
    return new Ring(Arrays.copyOf(x, size), Arrays.copyOf(y, size));
  }

  /** Signed area, as that of a {@link Ring}. */
  double area() {
    return Ring.area(x, y, size);
  }

  /**
   * What lies where {@code a * x + b * y + c} is not negative.
   *
   * @param spare is written to unless all lies there
   * @return this or {@code spare}
   */
  RingBuffer clip(double a, double b, double c, RingBuffer spare) {
    for (int i = 0; i < size; i++) {
      if (!(a * x[i] + b * y[i] + c >= 0)) {
        clipInto(spare, a, b, c);
        return spare;
      }
    }
    return this;
  }

  private void clipInto(RingBuffer into, double a, double b, double c) {
    into.reserve(2 * size);
    int kept = 0;
    double first = size > 0 ? a * x[0] + b * y[0] + c : 0;
    double side = first;
    for (int i = 0; i < size; i++) {
      int next = i + 1 < size ? i + 1 : 0;
      double nextSide = next == 0 ? first : a * x[next] + b * y[next] + c;
      if (side >= 0) {
        into.x[kept] = x[i];
        into.y[kept++] = y[i];
      }
      if (side >= 0 != nextSide >= 0) {
        double share = side / (side - nextSide);
        into.x[kept] = x[i] + share * (x[next] - x[i]);
        into.y[kept++] = y[i] + share * (y[next] - y[i]);
      }
      side = nextSide;
    }
    into.size = kept;
  }
}
