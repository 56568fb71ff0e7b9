package dev.fillplane.heat;

import dev.fillplane.finding.Finding;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/** Whether the air lets a thin leveller be poured; parts as in {@link AirReport}. */
public record AirCheck(
    @Measured(Dimension.EVAPORATION) double evaporation,
    EvaporationBand evaporationBand,
    @Measured(Dimension.EVAPORATION) double evaporationByMenzel,
    EvaporationLimit limit,
    @Measured(Dimension.TEMPERATURE) double dewPoint,
    @Measured(Dimension.TEMPERATURE_DIFFERENCE) double margin,
    @Measured(Dimension.TEMPERATURE) double leastSubstrate,
    AirVerdict verdict,
    List<Finding> warnings) {

  /** Copies the list. */
  public AirCheck {
    warnings = List.copyOf(warnings);
  }

  static AirCheck of(AirReport report, List<Finding> warnings) {
    return new AirCheck(
        report.evaporation(),
        report.evaporationBand(),
        report.evaporationByMenzel(),
        report.limit(),
        report.dewPoint(),
        report.margin(),
        report.leastSubstrate(),
        report.verdict(),
        warnings);
  }
}
