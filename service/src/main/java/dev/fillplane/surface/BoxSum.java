package dev.fillplane.surface;

/**
 * What a part of a cell has to be known by to integrate a floor of four triangles over it: its area
 * and the integrals of {@code s = east + north}, {@code t = east - north}, |s| and |t|, counted
 * from the centre of the cell. Signed as the ring. For one thread.
 */
final class BoxSum {

  private double[] rising = new double[16];
  private double[] falling = new double[16];
  private final Fan whole = new Fan();
  private final Fan half = new Fan();
  private double area;
  private double risingSum;
  private double fallingSum;
  private double risingSize;
  private double fallingSize;

  /** Sums over a ring. */
  void of(RingBuffer ring, double centreX, double centreY) {
    int size = ring.size();
    if (rising.length < size) {
      rising = new double[2 * size];
      falling = new double[2 * size];
    }
    for (int i = 0; i < size; i++) {
      double east = ring.x()[i] - centreX;
      double north = ring.y()[i] - centreY;
      rising[i] = east + north;
      falling[i] = east - north;
    }
    fallingSum = integral(ring, falling);
    fallingSize = size(ring, falling, fallingSum);
    risingSum = integral(ring, rising);
    risingSize = size(ring, rising, risingSum);
    area = whole.area();
  }

  private double integral(RingBuffer ring, double[] values) {
    whole.begin();
    for (int i = 0; i < ring.size(); i++) {
      whole.add(ring.x()[i], ring.y()[i], values[i]);
    }
    return whole.volume();
  }

  /** Integral of the absolute value. */
  private double size(RingBuffer ring, double[] values, double integral) {
    half.addFilled(ring.x(), ring.y(), values, ring.size());
    return 2 * half.volume() - integral;
  }

  double area() {
    return area;
  }

  double rising() {
    return risingSum;
  }

  double falling() {
    return fallingSum;
  }

  double risingSize() {
    return risingSize;
  }

  double fallingSize() {
    return fallingSize;
  }

  /** Integral of a plane with the elevation {@code centre} at the centre of the cell. */
  double plane(double centre, double slopeX, double slopeY) {
    return centre * area
        + slopeX * (risingSum + fallingSum) / 2
        + slopeY * (risingSum - fallingSum) / 2;
  }
}
