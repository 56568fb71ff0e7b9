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

  private record Outcome(double age, double end) {

    boolean beats(Outcome other) {
      return age < other.age || (age == other.age && end < other.end);
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
      Outcome next = outcome(crew, way);
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
      age = Math.min(age, outcome(crew, way).age());
    }
    return age;
  }

  private Outcome outcome(Crew crew, Way way) {
    Crew work = crew.with(1, 1, 1, crew.bagsPerBatch());
    return outcomes.computeIfAbsent(new Try(work, way), key -> rehearse(crew, way));
  }

  private Outcome rehearse(Crew crew, Way way) {
    LaidFloor floor = floor(crew);
    CrewRun run = run(crew, way);
    int last = floor.batches() - 1;
    return new Outcome(Ages.of(floor, run).deciding(), last < 0 ? 0 : run.placed(last));
  }

  private CrewRun run(Crew crew, Way way) {
    return CrewRun.of(floor(crew), TaskTimes.of(crew, sheet), way, crew);
  }

  private LaidFloor floor(Crew crew) {
    return floors.computeIfAbsent(
        crew.bagsPerBatch(), bags -> LaidFloor.of(plan, bags, sheet.yieldPerBag()));
  }
}
