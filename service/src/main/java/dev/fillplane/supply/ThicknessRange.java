package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Thinnest and thickest part of a layer, all between equally common. */
public record ThicknessRange(
    @Measured(Dimension.HEIGHT) double from, @Measured(Dimension.HEIGHT) double to) {

  double mean() {
    return (from + to) / 2;
  }
}
