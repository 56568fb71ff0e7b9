package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Dimension;

/**
 * Dew point and evaporation on their own, without a plan.
 *
 * @see AirMoisture
 */
public final class AirChecker {

  private static final ToldRange AIR = new ToldRange(Dimension.TEMPERATURE, -30, 60);
  private static final ToldRange SURFACE = new ToldRange(Dimension.TEMPERATURE, -30, 80);
  private static final ToldRange AIRSPEED = new ToldRange(Dimension.AIRSPEED, 0, 30);

  private static final Place ROOT = Place.root();

  private AirChecker() {}

  /**
   * Checks the air.
   *
   * @param request with a humidity from 0 to 1
   * @throws dev.fillplane.finding.FindingsException if a temperature or the airspeed cannot be one
   *     of a site
   */
  public static AirCheck check(AirCheckRequest request) {
    Findings findings = new Findings();
    checkRanges(request, findings);
    findings.throwIfErrors();
    if (request.airspeed().isEmpty()) {
      findings.warning("airspeed-assumed", ROOT);
    }
    double base = request.substrate().orElse(request.surface());
    AirReport report =
        AirReport.of(
            request.air(),
            request.humidity(),
            request.surface(),
            base,
            request.airspeed().orElse(0));
    AirWarnings warnings = new AirWarnings(report, findings);
    warnings.base(base, ROOT.at(request.substrate().isPresent() ? "substrate" : "surface"));
    warnings.surface(ROOT);
    return AirCheck.of(report, findings.warnings());
  }

  private static void checkRanges(AirCheckRequest request, Findings findings) {
    AIR.check(request.air(), "temperature of the air", ROOT.at("air"), findings);
    SURFACE.check(request.surface(), "temperature of the surface", ROOT.at("surface"), findings);
    request
        .substrate()
        .ifPresent(
            told -> SURFACE.check(told, "temperature of the base", ROOT.at("substrate"), findings));
    request
        .airspeed()
        .ifPresent(
            told -> AIRSPEED.check(told, "draught over the floor", ROOT.at("airspeed"), findings));
  }
}
