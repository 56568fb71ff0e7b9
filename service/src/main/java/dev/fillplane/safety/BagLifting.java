package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The bags of this job by the lifting equation, each lifted once by the person at its mixer: from
 * the floor, and from a stand at barrel height.
 */
final class BagLifting implements Rule {

  private static final double INCH = 0.0254;
  private static final double REACH = 12 * INCH;
  private static final double FLOOR = 8 * INCH;
  private static final double RIM = 36 * INCH;
  private static final double STAND = 0.75;
  private static final double TWIST = Math.toRadians(30);
  private static final double LONGEST_HOURS = 8;
  private static final double SHORTEST_HOURS = 0.1;
  private static final double HIGH_RISK = 3;

  private static final String BASIS =
      "NIOSH Pub. 94-110, revised lifting equation: hands 12 in out, from 8 in to 36 in high, 30"
          + " degrees of twist, poor hold; index 1 is the goal, over 3 nearly all workers are at"
          + " raised risk. It does not cover carrying";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    LiftingPoint floor = lift(job, FLOOR, TWIST);
    if (floor.recommendedMass() >= job.sheet().bagMass()) {
      return Optional.empty();
    }
    LiftingPoint stand = lift(job, STAND, 0);
    boolean grave = floor.index().orElse(Double.POSITIVE_INFINITY) > HIGH_RISK;
    return Optional.of(
        Note.of(
                "bag-lifting",
                grave ? Severity.WARNING : Severity.CAUTION,
                BASIS,
                "bags",
                job.bags(),
                "rate",
                number(rate(job)),
                "index",
                index(floor.index()),
                "stand",
                Amount.of(STAND, Dimension.HEIGHT),
                "standIndex",
                index(stand.index()))
            .valued(Amount.of(job.sheet().bagMass(), Dimension.MASS))
            .limited(Amount.of(floor.recommendedMass(), Dimension.MASS)));
  }

  private static LiftingPoint lift(SafetyInput job, double height, double twist) {
    double hours = Math.max(SHORTEST_HOURS, Math.min(LONGEST_HOURS, job.pourTime() / 3600));
    LiftingTask task =
        new LiftingTask(
            job.sheet().bagMass(),
            new HandPosition(REACH, height, twist),
            new HandPosition(REACH, RIM, twist),
            rate(job),
            hours,
            Coupling.POOR,
            false);
    return LiftingEquation.of(task).origin();
  }

  /** Bags a minute for the person at one mixer; 0 where the time is not known. */
  private static double rate(SafetyInput job) {
    return job.pourTime() > 0
        ? job.bags() / (job.pourTime() / 60) / Math.max(1, job.crew().mixers())
        : 0;
  }

  private static String index(OptionalDouble index) {
    return index.isPresent() ? number(index.getAsDouble()) : "too high to tell";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
