package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** What a thin leveller bears: care from {@code caution} on, no pour above {@code stop}. */
public record EvaporationLimit(
    @Measured(Dimension.EVAPORATION) double caution, @Measured(Dimension.EVAPORATION) double stop) {

  static EvaporationLimit ofThinLevellers() {
    return new EvaporationLimit(AirMoisture.CAUTION, AirMoisture.STOP);
  }
}
