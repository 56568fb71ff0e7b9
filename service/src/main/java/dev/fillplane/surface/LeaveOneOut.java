package dev.fillplane.surface;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * How each spot compares with what the others tell about it, under the covariance of all of them.
 * Exact, from the inverse of the kriging matrix without solving anew (Dubrule 1983, Mathematical
 * Geology 15, 687-699). The arrays are in the order of the spots; nobody writes to them.
 *
 * @param residual measured elevation minus the one the other spots tell; 0 where not told
 * @param standardized the residual in standard deviations of a measurement there; 0 where not told
 * @param told whether the other spots tell an elevation; false for a spot that the plane of the
 *     drift hangs on, such as each of only three
 */
public record LeaveOneOut(
    @Measured(Dimension.HEIGHT) double[] residual, double[] standardized, boolean[] told) {

  /** Root mean square and worst of the residuals; empty if none is told. */
  public Optional<CrossValidation> crossValidation() {
    int count = 0;
    double squares = 0;
    double worst = 0;
    for (int i = 0; i < residual.length; i++) {
      if (told[i]) {
        count++;
        squares += residual[i] * residual[i];
        worst = Math.abs(residual[i]) > Math.abs(worst) ? residual[i] : worst;
      }
    }
    return count == 0
        ? Optional.empty()
        : Optional.of(new CrossValidation(Math.sqrt(squares / count), worst));
  }
}
