package dev.fillplane.plan;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Remark;
import dev.fillplane.heat.Conditions;
import dev.fillplane.heat.Mix;
import dev.fillplane.heat.MixPlan;
import dev.fillplane.heat.Site;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.SheetDefaults;
import dev.fillplane.pour.Effort;
import dev.fillplane.pour.Healing;
import dev.fillplane.pour.OtherPour;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.PourPlanner;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.LiftRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a pour in bare numbers holds, and what would make it hold: the pour of a rectangle as
 * wide as the front and of even depth, from one end to the other, by the means of a whole plan.
 *
 * <p>A working or healing time that is told for the site takes the place of the sheet's and is
 * relied on in any heat; what cooler water and the like would add is then scaled by it.
 */
public final class PourChecker {

  private static final Place ROOT = Place.root();
  private static final double ROUNDING = 1e-9;

  private final Findings findings = new Findings();
  private final PourCheckRequest request;
  private final Site site;

  private PourChecker(PourCheckRequest request) {
    this.request = request;
    this.site = request.conditions().orElseGet(Conditions::unknown).site();
  }

  /**
   * Checks a pour.
   *
   * @throws dev.fillplane.finding.FindingsException if volume, front or depth is not positive, the
   *     crew cannot work as told, or the material contradicts itself
   */
  public static PourCheck check(PourCheckRequest request) {
    return new PourChecker(request).check();
  }

  private PourCheck check() {
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT.at("material"), findings);
    new PourCheckRanges(findings).check(request);
    CrewCheck.check(request.crew(), sheet, ROOT.at("crew"), findings);
    findings.throwIfErrors();
    checkThickness(sheet);
    PourJob job = job(request.depth());
    DataSheet poured = job.asPoured(sheet);
    BatchLimit.check(request.volume(), batch(poured), ROOT.at("volume"), findings);
    findings.throwIfErrors();
    warnOfTheUnknown();
    Mix mix = mix(poured, request.depth(), findings);
    return pour(job, sheet, poured, mix);
  }

  private PourCheck pour(PourJob job, DataSheet sheet, DataSheet poured, Mix mix) {
    Optional<Double> told = told();
    Healing healing = told.map(Healing::of).orElseGet(() -> job.healing(poured, mix));
    BayPlan bays = job.bays().apply(poured);
    List<OtherPour> others = new ArrayList<>(job.others(bays, poured, mix));
    lifts(sheet).ifPresent(others::add);
    told.ifPresent(time -> others.replaceAll(other -> other.found(time / mix.healingTime())));
    Pour pour = PourPlanner.plan(bays, poured, request.crew(), healing, others);
    return PourCheck.of(pour, healing.time(), request.length(), findings.warnings());
  }

  /** The healing time on site, as told or by the working time that is told. */
  private Optional<Double> told() {
    if (request.healingTime().isPresent()) {
      return Optional.of(request.healingTime().getAsDouble());
    }
    if (request.workingTime().isEmpty()) {
      return Optional.empty();
    }
    double assumed = SheetDefaults.HEALING_SHARE * request.workingTime().getAsDouble();
    findings.warning(
        "healing-time-assumed", ROOT.at("workingTime"), "time", Amount.of(assumed, Dimension.TIME));
    return Optional.of(assumed);
  }

  private Mix mix(DataSheet sheet, double depth, Findings into) {
    int bags = request.crew().bagsPerBatch();
    return MixPlan.of(sheet, site, depth, bags, ROOT.at("conditions"), into);
  }

  private void checkThickness(DataSheet sheet) {
    double depth = request.depth();
    if (depth < sheet.minimumLift() * (1 - ROUNDING)) {
      findings.warning(
          "thinner-than-sheet",
          ROOT.at("depth"),
          "thickness",
          Amount.of(depth, Dimension.HEIGHT),
          "minimum",
          Amount.of(sheet.minimumLift(), Dimension.HEIGHT));
    }
    new LiftRule(depth, sheet).warn(ROOT.at("depth"), findings);
  }

  private void warnOfTheUnknown() {
    if (request.conditions().isEmpty()) {
      findings.warning("conditions-assumed", ROOT);
      return;
    }
    List<String> assumed = request.conditions().get().assumed();
    if (!assumed.isEmpty()) {
      findings.warning(
          "temperatures-assumed", ROOT.at("conditions"), "names", String.join(", ", assumed));
    }
  }

  /** The pour of the same floor, {@code depth} deep. */
  private PourJob job(double depth) {
    EvenFloor floor = new EvenFloor(request.length(), request.frontWidth(), depth);
    return new PourJob(
        site,
        request.crew(),
        floor.area(),
        floor.area() * depth,
        depth,
        depth,
        depth,
        sheet -> floor.bays(request.crew().ribbons(batch(sheet))));
  }

  private double batch(DataSheet sheet) {
    return request.crew().bagsPerBatch() * sheet.yieldPerBag();
  }

  /** Two layers of half the depth, where the sheet allows them. */
  private Optional<OtherPour> lifts(DataSheet sheet) {
    double depth = request.depth() / 2;
    if (depth < sheet.minimumLift()) {
      return Optional.empty();
    }
    PourJob job = job(depth);
    DataSheet poured = job.asPoured(sheet);
    Mix mix = mix(poured, depth, new Findings());
    Remark remark =
        Remark.of("more-lifts", "lifts", 2, "depth", Amount.of(depth, Dimension.HEIGHT));
    return Optional.of(
        new OtherPour(
            Effort.LARGE,
            remark,
            "more-lifts-and-crew",
            () -> job.bays().apply(poured),
            poured,
            job.healing(poured, mix)));
  }
}
