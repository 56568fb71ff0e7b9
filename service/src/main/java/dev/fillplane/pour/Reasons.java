package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Says why a verdict is what it is. */
final class Reasons {

  // Three people at least, four over 100 m2 (common practice, no source).
  private static final int USUAL_PEOPLE = 3;
  private static final double LARGE_FLOOR = 100;
  private static final double ROUNDING = 1e-6;

  private Reasons() {}

  /**
   * The oldest edge, what sets the beat there, a crew that is small, and fronts that are too long
   * for hands.
   */
  static List<Remark> of(FloorPour pour) {
    BayPour worst = pour.worst();
    List<Remark> reasons = new ArrayList<>();
    if (pour.bays().stream().allMatch(bay -> bay.batchCount() == 0)) {
      reasons.add(Remark.of("nothing-to-pour"));
      return reasons;
    }
    if (worst.oldest() > 0) {
      reasons.add(oldest(pour, worst));
      reasons.add(beat(worst));
    }
    if (pour.crew().people() < usualPeople(pour)) {
      reasons.add(
          Remark.of("few-people", "people", pour.crew().people(), "usual", usualPeople(pour)));
    }
    for (BayPour bay : pour.bays()) {
      if (bay.bay().longestFront() > Bay.LONGEST_FRONT_BY_HAND + ROUNDING) {
        reasons.add(longFront(bay.bay()));
      }
    }
    return reasons;
  }

  private static int usualPeople(FloorPour pour) {
    double area = pour.bays().stream().mapToDouble(bay -> bay.bay().fill().area()).sum();
    return area > LARGE_FLOOR ? USUAL_PEOPLE + 1 : USUAL_PEOPLE;
  }

  private static Remark oldest(FloorPour pour, BayPour worst) {
    int before = 0;
    for (BayPour bay : pour.bays().subList(0, pour.bays().indexOf(worst))) {
      before += bay.strips().size();
    }
    return Remark.of(
        "edge-oldest",
        "bay",
        worst.bay().id(),
        "ribbon",
        before + worst.oldestStrip() + 1,
        "age",
        time(worst.oldest()),
        "limit",
        time((1 - FloorPour.RESERVE) * pour.healingTime()),
        "healing",
        time(pour.healingTime()));
  }

  private static Remark beat(BayPour worst) {
    CrewRate rate = worst.rate();
    String code =
        switch (rate.slowest()) {
          case MIXING -> "mixing-is-slowest";
          case PEOPLE -> "people-are-the-limit";
          case BARRELS -> "barrels-are-the-limit";
        };
    return Remark.of(
        code, "interval", time(rate.interval()), "people", rate.people(), "mixers", rate.mixers());
  }

  private static Remark longFront(Bay bay) {
    return Remark.of(
        "front-long",
        "bay",
        bay.id(),
        "front",
        Amount.of(bay.longestFront(), Dimension.PLAN),
        "limit",
        Amount.of(Bay.LONGEST_FRONT_BY_HAND, Dimension.PLAN));
  }

  private static Amount time(double seconds) {
    return Amount.of(seconds, Dimension.TIME);
  }
}
