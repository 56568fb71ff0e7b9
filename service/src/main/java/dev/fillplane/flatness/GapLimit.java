package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A gap that is allowed under an edge.
 *
 * @param straightedge length of the edge
 * @param gap largest that is allowed
 * @param share of the places of the edge that must keep to it, 1 for all; over 0
 */
public record GapLimit(
    @Measured(Dimension.PLAN) double straightedge,
    @Measured(Dimension.HEIGHT) double gap,
    double share) {

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  /** A gap over by no more than this is at its limit. */
  static final double ROUNDING = 1e-9;

  static GapLimit everywhere(FlatnessLimit limit) {
    return new GapLimit(limit.straightedge(), limit.gap(), 1);
  }

  static GapLimit inFeet(double feet, double inches, double share) {
    return new GapLimit(feet * FOOT, inches * INCH, share);
  }

  /** The same under an edge of another length. */
  public GapLimit under(double length) {
    return new GapLimit(length, gap, share);
  }
}
