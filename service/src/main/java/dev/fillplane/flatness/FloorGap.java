package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** The largest gap found and what it means. */
public record FloorGap(@Measured(Dimension.HEIGHT) double gap, Passes verdict) {

  /** The same of a survey too thin to see every gap: that a floor passes stays unclear. */
  public FloorGap unseen() {
    return verdict == Passes.WITHIN ? new FloorGap(gap, Passes.UNCLEAR) : this;
  }
}
