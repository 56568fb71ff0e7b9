package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Epoxy with sand on a damp slab, before it is primed.
 *
 * @param area to coat
 * @param hardening time until it may be primed
 * @param days that it adds to the job
 */
public record MoistureBarrier(
    @Measured(Dimension.AREA) double area, @Measured(Dimension.TIME) double hardening, int days) {

  /** It hardens in 12 to 24 h (common practice, no source). */
  private static final double HARDENING = 24 * 3600.0;

  static MoistureBarrier on(double area) {
    return new MoistureBarrier(area, HARDENING, 1);
  }
}
