package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bags of this job by the lifting equation, each lifted once by the person at its mixer from
 * the floor to the rim of a barrel, and what would ease that.
 */
final class BagLifting implements Rule {

  private static final double INCH = 0.0254;
  private static final double REACH = 12 * INCH;
  private static final double FLOOR = 8 * INCH;
  private static final double RIM = 36 * INCH;
  private static final double TWIST = Math.toRadians(30);
  private static final double LONGEST_HOURS = 8;
  private static final double SHORTEST_HOURS = 0.1;
  private static final int GOAL = 1;
  private static final double HIGH_RISK = 3;

  private static final String BASIS =
      "NIOSH Pub. 94-110, revised lifting equation: hands 12 in out, from 8 in to 36 in high, 30"
          + " degrees of twist, poor hold; index 1 is the goal, over 3 nearly all workers are at"
          + " raised risk. It covers neither carrying nor buckets of mix";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    LiftingTask task = task(job);
    LiftingResult lift = LiftingEquation.of(task);
    double recommended = lift.worst().recommendedMass();
    return recommended >= job.sheet().bagMass()
        ? Optional.empty()
        : Optional.of(
            note(job, task, lift)
                .valued(Amount.of(job.sheet().bagMass(), Dimension.MASS))
                .limited(Amount.of(recommended, Dimension.MASS)));
  }

  private static Note note(SafetyInput job, LiftingTask task, LiftingResult lift) {
    boolean grave = lift.worst().index().orElse(Double.POSITIVE_INFINITY) > HIGH_RISK;
    return Note.of(
        "bag-lifting",
        grave ? Severity.WARNING : Severity.CAUTION,
        BASIS,
        "bags",
        job.bags(),
        "rate",
        number(rate(job)),
        "index",
        index(lift.origin().index()),
        "rimIndex",
        index(lift.destination().orElseThrow().index()),
        "goal",
        GOAL,
        "stand",
        Amount.of(LiftingAlternatives.STAND, Dimension.HEIGHT),
        "standIndex",
        index(LiftingWay.STAND_AND_TURN, task),
        "half",
        Amount.of(job.sheet().bagMass() / 2, Dimension.MASS),
        "halfIndex",
        index(LiftingWay.SMALLER_BAG, task),
        "pairIndex",
        index(LiftingWay.TWO_PEOPLE, task));
  }

  private static LiftingTask task(SafetyInput job) {
    double hours = Math.max(SHORTEST_HOURS, Math.min(LONGEST_HOURS, job.pourTime() / 3600));
    return new LiftingTask(
        job.sheet().bagMass(),
        new HandPosition(REACH, FLOOR, TWIST),
        new HandPosition(REACH, RIM, TWIST),
        rate(job),
        hours,
        Coupling.POOR,
        true);
  }

  /** Bags a minute for the person at one mixer; 0 where the time is not known. */
  private static double rate(SafetyInput job) {
    return job.pourTime() > 0
        ? job.bags() / (job.pourTime() / 60) / Math.max(1, job.crew().mixers())
        : 0;
  }

  /** The index of another way; that of the lift as it is where the way is no better. */
  private static String index(LiftingWay way, LiftingTask task) {
    List<LiftingAlternative> better = LiftingAlternatives.of(task);
    return index(
        better.stream()
            .filter(other -> other.way() == way)
            .findFirst()
            .map(LiftingAlternative::index)
            .orElseGet(() -> LiftingEquation.of(task).worst().index()));
  }

  private static String index(OptionalDouble index) {
    return index.isPresent() ? number(index.getAsDouble()) : "too high to tell";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
