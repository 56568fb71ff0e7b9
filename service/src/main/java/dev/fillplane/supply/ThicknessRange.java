package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Mean thickness of a layer that is only known to lie between two values, all equally likely. */
public record ThicknessRange(
    @Measured(Dimension.HEIGHT) double from, @Measured(Dimension.HEIGHT) double to) {

  /** Halfway. */
  double mean() {
    return (from + to) / 2;
  }

  /** Volumes over {@code area} of as many thicknesses, evenly spread over the range. */
  double[] volumes(double area, int number) {
    double[] volumes = new double[number];
    for (int i = 0; i < number; i++) {
      volumes[i] = area * (from + (i + 0.5) / number * (to - from));
    }
    return volumes;
  }
}
