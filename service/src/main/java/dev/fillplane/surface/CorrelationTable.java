package dev.fillplane.surface;

import java.util.function.DoubleUnaryOperator;

/**
 * A correlation by {@code t = distance / range} as cubics on equal steps that keep its values and
 * slopes (Hermite). Beyond the table the formula itself is used.
 */
final class CorrelationTable {

  private static final int STEPS_PER_RANGE = 256;
  private static final int STEPS = 8 * STEPS_PER_RANGE;

  private final VariogramShape shape;
  private final double[] cubics = new double[4 * STEPS];

  CorrelationTable(VariogramShape shape, DoubleUnaryOperator slope) {
    this.shape = shape;
    for (int i = 0; i < STEPS; i++) {
      double from = (double) i / STEPS_PER_RANGE;
      double to = (double) (i + 1) / STEPS_PER_RANGE;
      double value = Correlation.rho(shape, from);
      double rise = Correlation.rho(shape, to) - value;
      double first = slope.applyAsDouble(from) / STEPS_PER_RANGE;
      double last = slope.applyAsDouble(to) / STEPS_PER_RANGE;
      cubics[4 * i] = value;
      cubics[4 * i + 1] = first;
      cubics[4 * i + 2] = 3 * rise - 2 * first - last;
      cubics[4 * i + 3] = first + last - 2 * rise;
    }
  }

  /** Puts correlations in the place of squared distances. */
  void replace(double[] squares, int from, int to, double range) {
    double stepsPerMetre = STEPS_PER_RANGE / range;
    for (int i = from; i < to; i++) {
      // By itself this becomes vector instructions.
      squares[i] = Math.sqrt(squares[i]) * stepsPerMetre;
    }
    for (int i = from; i < to; i++) {
      double steps = squares[i];
      int step = (int) steps;
      squares[i] =
          step < STEPS
              ? cubic(step, steps - step)
              : Correlation.rho(shape, steps / STEPS_PER_RANGE);
    }
  }

  private double cubic(int step, double part) {
    int at = 4 * step;
    return cubics[at] + part * (cubics[at + 1] + part * (cubics[at + 2] + part * cubics[at + 3]));
  }
}
