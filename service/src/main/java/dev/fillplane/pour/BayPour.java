package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.Strip;
import dev.fillplane.material.DataSheet;
import java.util.ArrayList;
import java.util.List;

/**
 * The pour of one bay at one beat.
 *
 * @param bay the bay
 * @param strips its strips with the batches in them
 * @param rate the beat
 * @param ages age of the oldest edge of each strip
 */
record BayPour(Bay bay, List<LaidStrip> strips, CrewRate rate, double[] ages) {

  /** At the beat, of those that the crew can choose, whose oldest edge is youngest. */
  static BayPour best(Bay bay, DataSheet sheet, Crew crew) {
    List<LaidStrip> strips = lay(bay, crew.bagsPerBatch() * sheet.yieldPerBag());
    double depth = bay.fill().meanDepth();
    double area = depth > 0 ? crew.bagsPerBatch() * sheet.yieldPerBag() / depth : 0;
    BatchWork work = new BatchWork(sheet.mixTime(), crew.bagsPerBatch(), area);
    BayPour best = null;
    for (CrewRate rate : CrewRate.choices(crew, work)) {
      BayPour next = at(bay, strips, rate);
      best = best == null || next.beats(best) ? next : best;
    }
    return best;
  }

  static BayPour at(Bay bay, List<LaidStrip> strips, CrewRate rate) {
    EdgeAges ages = new EdgeAges(strips, rate);
    return new BayPour(bay, strips, rate, strips.stream().mapToDouble(ages::oldest).toArray());
  }

  static List<LaidStrip> lay(Bay bay, double batch) {
    List<LaidStrip> laid = new ArrayList<>();
    double poured = 0;
    for (Strip strip : bay.strips()) {
      laid.add(new LaidStrip(strip, poured, batch));
      poured += strip.fill().volume();
    }
    return laid;
  }

  private boolean beats(BayPour other) {
    double age = oldest();
    double otherAge = other.oldest();
    return age < otherAge || (age == otherAge && rate.interval() < other.rate.interval());
  }

  /** Age of the oldest edge of the bay. */
  double oldest() {
    return ages.length == 0 ? 0 : ages[oldestStrip()];
  }

  /** Index of the strip with the oldest edge, the first of several. */
  int oldestStrip() {
    int oldest = 0;
    for (int i = 1; i < ages.length; i++) {
      oldest = ages[i] > ages[oldest] ? i : oldest;
    }
    return oldest;
  }

  int batchCount() {
    return strips.isEmpty() ? 0 : LaidStrip.batches(bay.fill().volume(), strips.get(0).batch());
  }

  /** When a batch is placed, at most the last one; 0 if there is none. */
  double placed(int batch) {
    return batchCount() == 0 ? 0 : rate.placed(Math.min(batch, batchCount() - 1));
  }

  /** From first water until the last batch is placed. */
  double duration() {
    return placed(batchCount());
  }
}
