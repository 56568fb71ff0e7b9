package dev.fillplane.surface;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * The terms of a drift about the centre of the spots: 1, and for a plane also x and y in parts of
 * the extent, so that no term outweighs the others; then one for each step.
 *
 * @param count 1 for a constant, 3 for a plane, and the steps
 * @param extent length that is one unit; positive
 * @param steps where the floor may jump
 * @param originX plan coordinates of the centre
 * @param originY plan coordinates of the centre
 */
record DriftTerms(int count, double extent, List<StepTerm> steps, double originX, double originY) {

  static DriftTerms of(Drift drift, double extent) {
    return new DriftTerms(drift == Drift.LINEAR ? 3 : 1, extent, List.of(), 0, 0);
  }

  static DriftTerms of(
      Drift drift, double extent, List<Step> steps, List<Polygon> rooms, LocalSpots spots) {
    List<StepTerm> terms = steps.stream().map(step -> StepTerm.of(step, rooms)).toList();
    int count = of(drift, extent).count() + terms.size();
    return new DriftTerms(count, extent, terms, spots.originX(), spots.originY());
  }

  /** Term {@code k} at a place. */
  double at(int k, double x, double y) {
    int smooth = count - steps.size();
    if (k >= smooth) {
      return steps.get(k - smooth).at(x + originX, y + originY);
    }
    return switch (k) {
      case 0 -> 1;
      case 1 -> x / extent;
      default -> y / extent;
    };
  }

  /** One column of values at the places for each term. */
  double[][] columns(double[] x, double[] y) {
    double[][] columns = new double[count][x.length];
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < x.length; i++) {
        columns[k][i] = at(k, x[i], y[i]);
      }
    }
    return columns;
  }
}
