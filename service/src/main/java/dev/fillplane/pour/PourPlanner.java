package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Strip;
import dev.fillplane.material.DataSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Plans the pour: batches as the crew mixes and places them, laid ribbon after ribbon, and whether
 * every wet edge is met in time.
 *
 * <p>A batch is the yield of its bags; the last one of a bay may be smaller. An edge is as old as
 * the time from the first water of the batch that made it to the placing of the batch that meets
 * it, at the point where it is oldest; the joins between the batches of one ribbon count too, and
 * so does a batch that waits. The oldest decides: up to 0.75 of the healing time it holds, up to
 * the healing time it is tight, else it breaks; what is spike-rolled only after the healing time
 * does not hold either. The crew works as well as any smaller crew could, so that more hands,
 * mixers, barrels or barrels filled ahead never make it worse ({@link Rehearsals}).
 *
 * <p>Times of the pieces of work are common practice without a source ({@link TaskTimes}); the
 * batches come from a run of events ({@link CrewRun}), one clock for all bays. What one ribbon
 * takes is spread evenly over its length.
 */
public final class PourPlanner {

  private static final int MOST_PEOPLE = 12;

  private PourPlanner() {}

  /**
   * Plans the pour of a floor.
   *
   * @param bays the bays, at least one, in the order of the pour
   * @param sheet the underlayment
   * @param crew who pours
   * @param healing how long edges will heal on site
   * @param others other ways to pour the floor, those of least effort first
   */
  public static Pour plan(
      BayPlan bays, DataSheet sheet, Crew crew, Healing healing, List<OtherPour> others) {
    Rehearsals rehearsals = new Rehearsals(bays, sheet);
    FloorPour pour = rehearsals.best(crew, healing);
    Timeline timeline = new Timeline(pour, sheet);
    return new Pour(
        pour.verdict(),
        Reasons.of(pour, TaskTimes.of(crew, sheet)),
        Losses.first(pour),
        pouredBays(pour),
        timeline.batches(),
        timeline.workers(),
        timeline.totals(),
        bays.joints(),
        new CrewNeed(crew.people(), crew.mixers(), needed(rehearsals, crew, healing)),
        Changes.of(rehearsals, pour, others),
        pour.duration());
  }

  private static OptionalInt needed(Rehearsals rehearsals, Crew crew, Healing healing) {
    for (int people = 1; people <= MOST_PEOPLE; people++) {
      Crew some = crew.with(people, crew.mixers(), crew.barrels(), crew.bagsPerBatch());
      if (healing.verdict(rehearsals.age(some)) == Verdict.HOLDS) {
        return OptionalInt.of(people);
      }
    }
    return OptionalInt.empty();
  }

  private static List<PouredBay> pouredBays(FloorPour pour) {
    double[] ages = pour.floor().meetings().ofRibbons(pour.run());
    List<PouredBay> bays = new ArrayList<>();
    for (LaidBay bay : pour.floor().bays()) {
      List<Ribbon> ribbons = new ArrayList<>();
      for (LaidStrip strip : bay.strips()) {
        ribbons.add(ribbon(pour, bay, strip, ages[bay.firstRibbon() + ribbons.size()]));
      }
      Bay of = bay.bay();
      bays.add(new PouredBay(of.id(), of.room().id(), of.lift(), of.pocket(), ribbons));
    }
    return bays;
  }

  private static Ribbon ribbon(FloorPour pour, LaidBay bay, LaidStrip laid, double age) {
    Strip strip = laid.strip();
    return new Ribbon(
        bay.firstRibbon() + strip.order(),
        strip.outline(),
        strip.fill().volume(),
        strip.fill().meanDepth(),
        laid.count(),
        placed(pour, bay, laid.first()),
        placed(pour, bay, laid.last()),
        age);
  }

  /** When a batch of a bay is placed, at most its last one; 0 if it has none. */
  private static double placed(FloorPour pour, LaidBay bay, int inBay) {
    int last = bay.batches() - 1;
    return last < 0 ? 0 : pour.run().placed(bay.firstBatch() + Math.min(inBay, last));
  }
}
