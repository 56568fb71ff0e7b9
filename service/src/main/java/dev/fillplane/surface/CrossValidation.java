package dev.fillplane.surface;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * How well each reading is told by the others.
 *
 * @param rmse root mean square of the leave-one-out residuals
 * @param worst the largest of them by its absolute value
 */
public record CrossValidation(
    @Measured(Dimension.HEIGHT) double rmse, @Measured(Dimension.HEIGHT) double worst) {}
