package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * The heat balance of one mix on its own, with its working time and what brings it to a temperature
 * that is wanted.
 *
 * @see MixHeat
 */
public final class MixChecker {

  /** Most ice as a share of all water, melted or not (ACI 305, as quoted in a trade magazine). */
  public static final double MOST_ICE = 0.75;

  private static final ToldRange RANGE = new ToldRange(Dimension.TEMPERATURE, -30, 100);

  private static final Place ROOT = Place.root();

  private final Findings findings = new Findings();
  private final MixCheckRequest request;

  private MixChecker(MixCheckRequest request) {
    this.request = request;
  }

  /**
   * Checks a mix.
   *
   * @throws dev.fillplane.finding.FindingsException if a mass is not positive or the material
   *     contradicts itself
   */
  public static MixCheck check(MixCheckRequest request) {
    return new MixChecker(request).check();
  }

  private MixCheck check() {
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT.at("material"), findings);
    checkMasses();
    checkTemperatures();
    findings.throwIfErrors();
    MixHeat heat =
        new MixHeat(
            request.powder(),
            request.aggregate().orElse(Portion.none()),
            request.water(),
            request.ice().map(Ice::mass).orElse(0.0));
    double mix = heat.mixTemperature();
    warn(sheet, mix);
    Needed needed =
        request.wanted().map(wanted -> needed(heat, wanted.temperature())).orElse(nothing());
    double workingTime = WorkingTime.of(sheet).workingTime(mix + WorkingTime.MIXING_HEAT);
    return new MixCheck(mix, workingTime, needed, findings.warnings());
  }

  private void checkMasses() {
    positive(request.powder().mass(), ROOT.at("powder").at("mass"));
    positive(request.water().mass(), ROOT.at("water").at("mass"));
    request.aggregate().ifPresent(a -> positive(a.mass(), ROOT.at("aggregate").at("mass")));
    request.ice().ifPresent(ice -> positive(ice.mass(), ROOT.at("ice").at("mass")));
  }

  private void checkTemperatures() {
    within(request.powder().temperature(), "temperature of the powder", at("powder"));
    within(request.water().temperature(), "temperature of the water", at("water"));
    request
        .aggregate()
        .ifPresent(a -> within(a.temperature(), "temperature of the aggregate", at("aggregate")));
    request
        .wanted()
        .ifPresent(w -> within(w.temperature(), "temperature that is wanted", at("wanted")));
  }

  private void within(double temperature, String name, Place place) {
    RANGE.check(temperature, name, place.at("temperature"), findings);
  }

  private void positive(double mass, Place place) {
    if (!(mass > 0)) {
      findings.error("not-positive", place, "name", "mass");
    }
  }

  private void warn(DataSheet sheet, double mix) {
    if (concreteLike()) {
      findings.warning(
          "concrete-like-mix", request.ice().isPresent() ? at("ice") : at("aggregate"));
    }
    SiteWarnings warnings = new SiteWarnings(sheet, findings);
    warnings.water(request.water().temperature(), at("water").at("temperature"));
    warnings.outside("mix-outside-sheet", mix + WorkingTime.MIXING_HEAT, ROOT);
    warnings.estimated(mix + WorkingTime.MIXING_HEAT, ROOT);
  }

  private boolean concreteLike() {
    return request.aggregate().isPresent() || request.ice().isPresent();
  }

  private static Place at(String name) {
    return ROOT.at(name);
  }

  private Needed needed(MixHeat heat, double wanted) {
    double water = heat.neededWater(wanted);
    OptionalDouble ice = concreteLike() ? iceInMix(heat, wanted) : iceInBarrel(heat, water);
    boolean allowed = WaterBarrel.allows(water);
    if (!allowed) {
      findings.warning(
          "no-water-helps", at("wanted"), "wanted", Amount.of(wanted, Dimension.TEMPERATURE));
    }
    return new Needed(allowed ? OptionalDouble.of(water) : OptionalDouble.empty(), ice);
  }

  private static OptionalDouble iceInMix(MixHeat heat, double wanted) {
    double ice = heat.neededIce(wanted);
    double most = MOST_ICE * (heat.water().mass() + heat.iceMass());
    return ice > 0 && ice <= most ? OptionalDouble.of(ice) : OptionalDouble.empty();
  }

  private static OptionalDouble iceInBarrel(MixHeat heat, double needed) {
    double ice = WaterBarrel.ice(heat.water().mass(), heat.water().temperature(), needed);
    return ice > 0 && WaterBarrel.allows(needed) ? OptionalDouble.of(ice) : OptionalDouble.empty();
  }

  private static Needed nothing() {
    return new Needed(OptionalDouble.empty(), OptionalDouble.empty());
  }
}
