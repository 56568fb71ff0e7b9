package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;

/** Where a layer is thinner than it should be. Exact for the piecewise-linear floor. */
final class ThinPart {

  /** A layer this much below the least is not thin: depths carry the rounding of their sums. */
  private static final double ROUNDING = 1e-9;

  private final Depths depths;
  private final DepthSummary depth;
  private final double least;

  ThinPart(Depths depths, DepthSummary depth, double least) {
    this.depths = depths;
    this.depth = depth;
    this.least = least;
  }

  /** The depth from which on the pour is deep enough. */
  double level() {
    return least - ROUNDING;
  }

  /** What is poured under a target that lies lower by the layers above and by that depth. */
  Fill deepEnough(double above) {
    return depths.deeperThan(above + level());
  }

  /**
   * The area on which a layer is thin.
   *
   * @param above thickness of the layers above it
   * @param thickness of the layer where it is thickest
   * @param upTo the pour up to the top of the layer
   */
  double area(double above, double thickness, Fill upTo) {
    if (least <= 0) {
      return 0;
    }
    if (thickness < level()) {
      return upTo.area();
    }
    if (above <= 0 && depth.minimum() >= level()) {
      return 0; // as below, without a walk over the floor
    }
    double thin = upTo.area() - deepEnough(above).area();
    return thin > ROUNDING * upTo.area() ? thin : 0;
  }
}
