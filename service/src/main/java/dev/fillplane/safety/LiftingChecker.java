package dev.fillplane.safety;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Remark;
import dev.fillplane.heat.ToldRange;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The lifting equation on its own, with other ways to do the lift.
 *
 * @see LiftingEquation
 */
public final class LiftingChecker {

  private static final ToldRange MASS = new ToldRange(Dimension.MASS, 0.1, 500);
  private static final ToldRange REACH = new ToldRange(Dimension.HEIGHT, 0, 3);
  private static final ToldRange HEIGHT = new ToldRange(Dimension.HEIGHT, 0, 5);
  private static final ToldRange TWIST = new ToldRange(Dimension.ANGLE, 0, Math.PI);
  private static final ToldRange AIR = new ToldRange(Dimension.TEMPERATURE, -30, 60);

  private static final int GOAL = 1;
  private static final int HIGH_RISK = 3;

  private static final Place ROOT = Place.root();

  private static final String BASIS =
      "NIOSH Pub. 94-110 (1994, revised 2021), revised lifting equation in its inch-pound form;"
          + " index 1 is the goal, over 3 nearly all workers are at raised risk. Two people lift two"
          + " thirds of what both could alone: HSE L23, from memory";

  private LiftingChecker() {}

  /**
   * Judges a lift.
   *
   * @throws dev.fillplane.finding.FindingsException if a quantity cannot be one of a lift
   */
  public static LiftingCheck check(LiftingCheckRequest request) {
    Findings findings = new Findings();
    checkRanges(request, findings);
    findings.throwIfErrors();
    LiftingTask task = request.task();
    LiftingResult result = LiftingEquation.of(task);
    List<Remark> whyNot = LiftingScope.whyNot(request);
    warn(task, result, findings);
    List<String> unknown = LiftingScope.unknown(request.circumstances());
    if (!unknown.isEmpty()) {
      String names = String.join(", ", unknown);
      findings.warning(
          "lift-not-told",
          ROOT.at("circumstances"),
          "names",
          names,
          "steps",
          LiftingScope.MOST_STEPS);
    }
    return new LiftingCheck(
        result.origin(),
        result.destination(),
        result.worst().index(),
        whyNot.isEmpty(),
        whyNot,
        LiftingAlternatives.of(task),
        BASIS,
        findings.warnings());
  }

  private static void warn(LiftingTask task, LiftingResult result, Findings findings) {
    OptionalDouble index = result.worst().index();
    if (index.isEmpty()) {
      findings.warning("lift-out-of-bounds", ROOT);
    } else if (index.getAsDouble() > GOAL) {
      boolean high = index.getAsDouble() > HIGH_RISK;
      findings.warning(
          high ? "lifting-index-high" : "lifting-index-over-goal",
          ROOT.at("mass"),
          "mass",
          Amount.of(task.mass(), Dimension.MASS),
          "recommended",
          Amount.of(result.worst().recommendedMass(), Dimension.MASS),
          "index",
          String.format(Locale.ROOT, "%.2f", index.getAsDouble()),
          "mark",
          high ? HIGH_RISK : GOAL);
    }
  }

  private static void checkRanges(LiftingCheckRequest request, Findings findings) {
    MASS.check(request.mass(), "mass of the load", ROOT.at("mass"), findings);
    checkRanges(request.origin(), ROOT.at("origin"), findings);
    checkRanges(request.destination(), ROOT.at("destination"), findings);
    Place air = ROOT.at("circumstances").at("air");
    request
        .circumstances()
        .air()
        .ifPresent(told -> AIR.check(told, "temperature of the air", air, findings));
  }

  private static void checkRanges(HandPosition hands, Place place, Findings findings) {
    REACH.check(hands.horizontal(), "reach of the hands", place.at("horizontal"), findings);
    HEIGHT.check(hands.vertical(), "height of the hands", place.at("vertical"), findings);
    TWIST.check(hands.asymmetry(), "twist of the body", place.at("asymmetry"), findings);
  }
}
