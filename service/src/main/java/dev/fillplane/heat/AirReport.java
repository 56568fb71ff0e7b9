package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * What the air does to base and fresh surface.
 *
 * @param evaporation water that leaves the fresh surface, after Uno
 * @param evaporationBand where the true value may lie
 * @param evaporationByMenzel a second estimate
 * @param limit what a thin leveller bears
 * @param dewPoint of the air
 * @param margin of the base above the dew point
 * @param leastSubstrate coldest base that stays dry, the dew point and 3 K
 */
public record AirReport(
    @Measured(Dimension.EVAPORATION) double evaporation,
    EvaporationBand evaporationBand,
    @Measured(Dimension.EVAPORATION) double evaporationByMenzel,
    EvaporationLimit limit,
    @Measured(Dimension.TEMPERATURE) double dewPoint,
    @Measured(Dimension.TEMPERATURE_DIFFERENCE) double margin,
    @Measured(Dimension.TEMPERATURE) double leastSubstrate,
    AirVerdict verdict) {

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  /** Of a place, where its humidity is told; a thin pour soon takes the temperature of its base. */
  static Optional<AirReport> of(Site site, double mix) {
    if (site.humidity().isEmpty()) {
      return Optional.empty();
    }
    double humidity = site.humidity().getAsDouble();
    double surface = Math.max(mix, site.floor());
    return Optional.of(of(site.air(), humidity, surface, site.floor(), site.airspeed()));
  }

  /** Of temperatures in C, a relative humidity of 0 to 1 and an airspeed in m/s. */
  static AirReport of(
      double air, double humidity, double surface, double substrate, double airspeed) {
    double evaporation = AirMoisture.evaporation(surface, air, humidity, airspeed);
    EvaporationBand band = EvaporationBand.about(evaporation);
    double dewPoint = AirMoisture.dewPoint(air, humidity);
    double margin = substrate - dewPoint;
    return new AirReport(
        evaporation,
        band,
        AirMoisture.evaporationByMenzel(surface, air, humidity, airspeed),
        EvaporationLimit.ofThinLevellers(),
        dewPoint,
        margin,
        dewPoint + AirMoisture.DEW_MARGIN,
        verdict(evaporation, band, margin));
  }

  /** Whether the base may sweat. */
  boolean sweats() {
    return sweats(margin);
  }

  private static boolean sweats(double margin) {
    return margin < AirMoisture.DEW_MARGIN - ROUNDING;
  }

  private static AirVerdict verdict(double evaporation, EvaporationBand band, double margin) {
    if (sweats(margin) || evaporation > AirMoisture.STOP) {
      return AirVerdict.BREAKS;
    }
    return band.to() > AirMoisture.CAUTION ? AirVerdict.TIGHT : AirVerdict.HOLDS;
  }
}
