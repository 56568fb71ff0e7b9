package dev.fillplane.surface;

import java.util.Arrays;
import java.util.Optional;
import org.tinfour.common.IIncrementalTinNavigator;

/**
 * What the others tell about one place of a dense survey. Exact: leaving a place out of a Delaunay
 * triangulation changes nothing outside its neighbours, so these alone are triangulated again.
 *
 * @param residual elevation minus what the others tell
 * @param squares sum of the squared weights of the others
 * @param distance to the nearest of them on plan
 */
record Omission(double residual, double squares, double distance) {

  /**
   * Empty where the others do not surround the place.
   *
   * @param without places that are not believed and have no say either
   */
  static Optional<Omission> of(
      DensePlaces all,
      IIncrementalTinNavigator navigator,
      Method method,
      int place,
      boolean[] without) {
    double x = all.x()[place];
    double y = all.y()[place];
    int[] others =
        Arrays.stream(Triangulation.neighbours(navigator, x, y, place))
            .filter(other -> !without[other])
            .toArray();
    if (others.length < 3) {
      return Optional.empty();
    }
    Triangulation triangulation = Triangulation.of(all, others);
    if (!triangulation.exists()) {
      return Optional.empty();
    }
    double[] weights = DenseInterpolator.weights(triangulation, method, others, x, y);
    double told = 0;
    double squares = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < others.length; i++) {
      told += weights[i] * all.z()[others[i]];
      squares += weights[i] * weights[i];
      nearest = Math.min(nearest, Math.hypot(all.x()[others[i]] - x, all.y()[others[i]] - y));
    }
    return Double.isNaN(told)
        ? Optional.empty()
        : Optional.of(new Omission(all.z()[place] - told, squares, nearest));
  }
}
