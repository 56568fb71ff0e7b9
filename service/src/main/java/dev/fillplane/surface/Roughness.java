package dev.fillplane.surface;

import java.util.Arrays;

/**
 * How fast a densely surveyed floor leaves what its neighbours tell: the variance of a place that
 * is not measured grows in proportion to its distance from the nearest reading (as for an
 * exponential covariance at short distances).
 *
 * <p>Each place of a sample is left out. What its squared residual has above the error of the
 * readings is summed, and so are the distances; their ratio is the rate. The hundredth part with
 * the largest residuals is left aside, so that wrong readings do not hide themselves. A rate holds
 * for one of {@value #SIDE} by {@value #SIDE} parts of the box and leans on that of the whole with
 * the weight of {@value #LEAN} places; the whole leans on (3 mm)^2 over 3 m with the weight of 3
 * places. Our choices, no source.
 */
final class Roughness {

  private static final int SIDE = 8;
  private static final int LEAN = 30;
  private static final int WHOLE_LEAN = 3;
  private static final double USUAL = 0.003 * 0.003 / 3;
  private static final double SPARED = 0.99;

  private final Box box;
  private final double[] rates;

  private Roughness(Box box, double[] rates) {
    this.box = box;
    this.rates = rates;
  }

  /**
   * From some places of a survey.
   *
   * @param variance variance of a reading
   */
  static Roughness of(DensePlaces all, int[] places, Omission[] omissions, double variance) {
    Roughness roughness = new Roughness(Box.of(all.x(), all.y()), new double[SIDE * SIDE]);
    double[] excess = new double[SIDE * SIDE];
    double[] distance = new double[SIDE * SIDE];
    double limit = limit(omissions);
    int used = 0;
    for (int i = 0; i < places.length; i++) {
      double square = omissions[i].residual() * omissions[i].residual();
      if (square <= limit) {
        int part = roughness.part(all.x()[places[i]], all.y()[places[i]]);
        excess[part] += square - variance * (1 + omissions[i].squares());
        distance[part] += omissions[i].distance();
        used++;
      }
    }
    roughness.setRates(excess, distance, used);
    return roughness;
  }

  private static double limit(Omission[] omissions) {
    double[] squares =
        Arrays.stream(omissions).mapToDouble(one -> one.residual() * one.residual()).toArray();
    Arrays.sort(squares);
    int last = (int) Math.ceil(SPARED * squares.length) - 1;
    return squares.length == 0 ? 0 : squares[last];
  }

  private void setRates(double[] excess, double[] distance, int used) {
    double allExcess = Arrays.stream(excess).sum();
    double allDistance = Arrays.stream(distance).sum();
    double mean = used == 0 || allDistance == 0 ? 1 : allDistance / used;
    double lean = WHOLE_LEAN * mean;
    double whole = Math.max(0, (allExcess + USUAL * lean) / (allDistance + lean));
    for (int part = 0; part < rates.length; part++) {
      double more = LEAN * mean;
      rates[part] = Math.max(0, (excess[part] + whole * more) / (distance[part] + more));
    }
  }

  private int part(double x, double y) {
    int column = (int) (SIDE * (x - box.west()) / Math.max(box.east() - box.west(), 1e-12));
    int row = (int) (SIDE * (y - box.south()) / Math.max(box.north() - box.south(), 1e-12));
    return Math.max(0, Math.min(SIDE - 1, row)) * SIDE + Math.max(0, Math.min(SIDE - 1, column));
  }

  /** Variance at a position that is so far from the nearest reading. */
  double variance(double x, double y, double distance) {
    return rates[part(x, y)] * distance;
  }
}
