package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Strip;
import dev.fillplane.material.DataSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Plans the pour: batches at the steady beat of the crew, laid ribbon after ribbon, and whether
 * every wet edge is met in time.
 *
 * <p>A batch is the yield of its bags; the last one of a bay may be smaller. An edge is as old as
 * the time from the first water of the batch that made it to the placing of the batch that meets
 * it, at the point where it is oldest; the joins between the batches of one ribbon count too. The
 * oldest edge of all decides: up to 0.75 of the healing time it holds, up to the healing time it is
 * tight, else it breaks. For each bay the crew works as well as any smaller crew could, so that
 * more hands or mixers never make an edge older.
 *
 * <p>Times of stages are common practice without a source ({@link BatchWork}); the beat is that of
 * the slowest stage ({@link CrewRate}), without hold-ups. What one ribbon takes is spread evenly
 * over its length.
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
   * @param healingTime from first water until an edge no longer closes, as it will be on site
   * @param cooler cooler water that could be had, if any
   */
  public static Pour plan(
      BayPlan bays, DataSheet sheet, Crew crew, double healingTime, Optional<CoolerWater> cooler) {
    FloorPour pour = FloorPour.of(bays, sheet, crew, healingTime);
    return new Pour(
        pour.verdict(),
        Reasons.of(pour),
        pouredBays(pour),
        batches(pour, sheet),
        bays.joints(),
        new CrewNeed(crew.people(), crew.mixers(), needed(bays, sheet, crew, healingTime)),
        Changes.of(bays, sheet, pour, cooler),
        pour.bays().stream().mapToDouble(BayPour::duration).sum());
  }

  private static OptionalInt needed(BayPlan bays, DataSheet sheet, Crew crew, double healingTime) {
    for (int people = 1; people <= MOST_PEOPLE; people++) {
      Crew some = new Crew(people, crew.mixers(), crew.barrels(), crew.bagsPerBatch());
      if (FloorPour.of(bays, sheet, some, healingTime).holds()) {
        return OptionalInt.of(people);
      }
    }
    return OptionalInt.empty();
  }

  private static List<PouredBay> pouredBays(FloorPour pour) {
    List<PouredBay> bays = new ArrayList<>();
    int before = 0;
    for (BayPour bay : pour.bays()) {
      List<Ribbon> ribbons = new ArrayList<>();
      for (int i = 0; i < bay.strips().size(); i++) {
        ribbons.add(ribbon(bay, i, before));
      }
      before += ribbons.size();
      bays.add(new PouredBay(bay.bay().id(), bay.bay().room().id(), 1, ribbons));
    }
    return bays;
  }

  private static Ribbon ribbon(BayPour bay, int index, int before) {
    LaidStrip laid = bay.strips().get(index);
    Strip strip = laid.strip();
    return new Ribbon(
        before + strip.order(),
        strip.outline(),
        strip.fill().volume(),
        strip.fill().meanDepth(),
        laid.count(),
        bay.placed(laid.first()),
        bay.placed(laid.last()),
        bay.ages()[index]);
  }

  private static List<Batch> batches(FloorPour pour, DataSheet sheet) {
    List<Batch> batches = new ArrayList<>();
    for (BayPour bay : pour.bays()) {
      double left = bay.bay().fill().volume();
      int full = pour.crew().bagsPerBatch();
      for (int i = 0; i < bay.batchCount(); i++) {
        int bags = Math.max(1, Math.min(full, LaidStrip.batches(left, sheet.yieldPerBag())));
        CrewRate rate = bay.rate();
        batches.add(new Batch(bay.bay().id(), i + 1, bags, rate.firstWater(i), rate.placed(i)));
        left -= full * sheet.yieldPerBag();
      }
    }
    return batches;
  }
}
