package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.material.DataSheet;
import java.util.HashMap;
import java.util.Map;

/**
 * Runs of crews on one floor. A crew works in the best of its ways: that with the youngest ages, of
 * those the one that ends first. Since a larger crew can choose among more ways, it is never worse.
 * What ran once is remembered.
 */
final class Rehearsals {

  private record Try(Crew work, Way way) {}

  /**
   * Of a run that was left the age is that of the oldest so far, older than what it had to beat.
   */
  private record Outcome(double age, double end, boolean whole) {

    boolean beats(Outcome other) {
      return age < other.age || (age == other.age && end < other.end);
    }

    boolean tells(double limit) {
      return whole || age > limit;
    }
  }

  private final BayPlan plan;
  private final DataSheet sheet;
  private final Map<Integer, LaidFloor> floors = new HashMap<>();
  private final Map<Try, Outcome> outcomes = new HashMap<>();

  Rehearsals(BayPlan plan, DataSheet sheet) {
    this.plan = plan;
    this.sheet = sheet;
  }

  BayPlan plan() {
    return plan;
  }

  DataSheet sheet() {
    return sheet;
  }

  /** Runs on another floor or with another material; these where neither differs. */
  Rehearsals on(BayPlan otherPlan, DataSheet otherSheet) {
    boolean same = otherPlan == plan && otherSheet.equals(sheet);
    return same ? this : new Rehearsals(otherPlan, otherSheet);
  }

  /** The pour of the floor by a crew in its best way. */
  FloorPour best(Crew crew, Healing healing) {
    LaidFloor floor = floor(crew);
    Way best = null;
    Outcome least = null;
    for (Way way : Way.of(crew, floor.batches())) {
      Outcome next = outcome(crew, way, least == null ? Double.POSITIVE_INFINITY : least.age());
      if (least == null || next.beats(least)) {
        least = next;
        best = way;
      }
    }
    return new FloorPour(floor, crew, best, run(crew, best), healing);
  }

  /** The age that decides, in the best way of a crew. */
  double age(Crew crew) {
    double age = Double.POSITIVE_INFINITY;
    for (Way way : Way.of(crew, floor(crew).batches())) {
      age = Math.min(age, outcome(crew, way, age).age());
    }
    return age;
  }

  /** A way in which anything gets older than {@code limit} need not be followed to its end. */
  private Outcome outcome(Crew crew, Way way, double limit) {
    Try key = new Try(crew.with(1, 1, 1, crew.bagsPerBatch()), way);
    Outcome known = outcomes.get(key);
    if (known == null || !known.tells(limit)) {
      known = rehearse(crew, way, limit);
      outcomes.put(key, known);
    }
    return known;
  }

  private Outcome rehearse(Crew crew, Way way, double limit) {
    LaidFloor floor = floor(crew);
    CrewRun run = CrewRun.upTo(limit, floor, TaskTimes.of(crew, sheet), way, crew);
    if (run.isLeft()) {
      return new Outcome(run.oldest(), Double.POSITIVE_INFINITY, false);
    }
    int last = floor.batches() - 1;
    return new Outcome(Ages.of(floor, run).deciding(), last < 0 ? 0 : run.placed(last), true);
  }

  private CrewRun run(Crew crew, Way way) {
    return CrewRun.of(floor(crew), TaskTimes.of(crew, sheet), way, crew);
  }

  private LaidFloor floor(Crew crew) {
    return floors.computeIfAbsent(
        crew.bagsPerBatch(), bags -> LaidFloor.of(plan, bags, sheet.yieldPerBag()));
  }
}
