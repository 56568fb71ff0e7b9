package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Mix water per bag that a sheet allows. */
public record WaterRange(
    @Measured(Dimension.LIQUID) double from, @Measured(Dimension.LIQUID) double to) {

  /** What is allowed where the sheet names one amount only. */
  static WaterRange around(double water) {
    return new WaterRange(
        water * (1 - SheetDefaults.WATER_TOLERANCE), water * (1 + SheetDefaults.WATER_TOLERANCE));
  }

  WaterRange times(double factor) {
    return new WaterRange(from * factor, to * factor);
  }
}
