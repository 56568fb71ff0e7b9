package dev.fillplane.screed;

/**
 * Rows of pins between two walls: as near to 1.75 m apart as whole rows allow, within 1.5 to 2 m,
 * centred, so that the first stands about half a spacing from the wall and never nearer than 0.3 m.
 * Beyond 100 rows they stand further apart.
 */
final class PinRows {

  private static final double SPACING = 1.75;
  private static final double NARROWEST = 1.5;
  private static final double WIDEST = 2.0;
  private static final int MOST = 100;

  private PinRows() {}

  static double[] over(double from, double to) {
    double length = to - from;
    int rows = (int) Math.min(MOST, Math.max(1, Math.rint(length / SPACING)));
    double spacing = length / rows;
    if (rows < MOST) {
      spacing = Math.max(NARROWEST, Math.min(WIDEST, spacing));
    }
    double[] places = new double[rows];
    for (int i = 0; i < rows; i++) {
      places[i] = (from + to) / 2 + (i - (rows - 1) / 2.0) * spacing;
    }
    return places;
  }
}
