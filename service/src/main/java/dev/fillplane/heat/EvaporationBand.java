package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Between what the true evaporation lies, as measurements scatter about the estimate. */
public record EvaporationBand(
    @Measured(Dimension.EVAPORATION) double from, @Measured(Dimension.EVAPORATION) double to) {

  static EvaporationBand about(double estimate) {
    return new EvaporationBand(
        (1 - AirMoisture.SPREAD) * estimate, (1 + AirMoisture.SPREAD) * estimate);
  }
}
