package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Says why a verdict is what it is. */
final class Reasons {

  // Three people at least, four over 100 m2 (common practice, no source).
  private static final int USUAL_PEOPLE = 3;
  private static final double LARGE_FLOOR = 100;
  private static final double ROUNDING = 1e-6;

  private Reasons() {}

  /**
   * The oldest edge or batch, what is lost first, late rolling, what sets the pace, a crew that is
   * small, fronts that are too long for hands, and heat that no sheet speaks for.
   */
  static List<Remark> of(FloorPour pour, TaskTimes times) {
    if (pour.floor().batches() == 0) {
      return List.of(Remark.of("nothing-to-pour"));
    }
    List<Remark> reasons = new ArrayList<>();
    double soonest = times.soonest(1);
    if (soonest > pour.healing().time()) {
      reasons.add(Remark.of("no-time-to-place", "needed", time(soonest), "healing", healing(pour)));
    }
    LaidBay worst = OldestEdge.of(pour).bay();
    reasons.add(oldest(pour));
    Losses.first(pour).ifPresent(lost -> reasons.add(lost(lost)));
    if (pour.ages().roll() > pour.healing().time()) {
      reasons.add(
          Remark.of("rolled-late", "age", time(pour.ages().roll()), "healing", healing(pour)));
    }
    reasons.add(pace(pour, times, worst));
    addCrewAndFronts(pour, reasons);
    if (!pour.healing().vouched()) {
      reasons.add(Remark.of("hotter-than-sheet"));
    }
    return reasons;
  }

  private static void addCrewAndFronts(FloorPour pour, List<Remark> reasons) {
    int usual = usualPeople(pour);
    if (pour.crew().people() < usual) {
      reasons.add(Remark.of("few-people", "people", pour.crew().people(), "usual", usual));
    }
    for (LaidBay bay : pour.floor().bays()) {
      double front = bay.bay().longestFront();
      if (!pour.crew().pumps() && front > Bay.LONGEST_FRONT_BY_HAND + ROUNDING) {
        reasons.add(longFront(bay.bay()));
      }
    }
  }

  private static int usualPeople(FloorPour pour) {
    double area = pour.floor().bays().stream().mapToDouble(bay -> bay.bay().fill().area()).sum();
    return area > LARGE_FLOOR ? USUAL_PEOPLE + 1 : USUAL_PEOPLE;
  }

  private static Remark oldest(FloorPour pour) {
    OldestEdge oldest = OldestEdge.of(pour);
    if (oldest.age() < pour.ages().batch()) {
      return Remark.of(
          "batch-oldest",
          "age",
          time(pour.ages().batch()),
          "limit",
          limit(pour),
          "healing",
          healing(pour));
    }
    return Remark.of(
        "edge-oldest",
        "bay",
        oldest.bay().bay().id(),
        "ribbon",
        oldest.ribbon(),
        "age",
        time(oldest.age()),
        "limit",
        limit(pour),
        "healing",
        healing(pour));
  }

  private static Remark lost(LostEdge lost) {
    return Remark.of(
        "edge-lost",
        "bay",
        lost.bay(),
        "ribbon",
        lost.ribbon(),
        "at",
        time(lost.at()),
        "batch",
        lost.batch(),
        "met",
        time(lost.met()));
  }

  private static Amount limit(FloorPour pour) {
    return time(pour.healing().limit());
  }

  private static Amount healing(FloorPour pour) {
    return time(pour.healing().time());
  }

  private static Remark pace(FloorPour pour, TaskTimes times, LaidBay bay) {
    double depth = bay.bay().fill().meanDepth();
    double area = depth > 0 ? bay.batch() / depth : 0;
    int bags = pour.crew().bagsPerBatch();
    Pace pace = Pace.of(times, pour.way(), bags, area, pour.crew().pumps());
    String code =
        switch (pace.slowest()) {
          case PEOPLE -> "people-are-the-limit";
          case BARRELS -> "barrels-are-the-limit";
          case WATER -> "water-is-slowest";
          case PUMP -> "pump-is-slowest";
          default -> "mixing-is-slowest";
        };
    return Remark.of(
        code,
        "interval",
        time(interval(pour, bay).orElse(pace.interval())),
        "people",
        pour.way().people(),
        "mixers",
        pour.way().mixers());
  }

  /** Mean time between two batches of a bay on the floor. */
  private static OptionalDouble interval(FloorPour pour, LaidBay bay) {
    int last = bay.batches() - 1;
    if (last < 1) {
      return OptionalDouble.empty();
    }
    int first = bay.firstBatch();
    double time = pour.run().placed(first + last) - pour.run().placed(first);
    return OptionalDouble.of(time / last);
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
