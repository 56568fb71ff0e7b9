package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Says what to do when a pour goes wrong, with the numbers of its plan: how long mixing may stand
 * still, where to end, how many bags are at stake, what to do the day after. Only what this job has
 * can go wrong: there is no leak without a dam, and no drill beside a pump. What to do is common
 * practice, no source: end at a door or against a board, at full depth, never run out thin, and
 * prime again before going on.
 */
public final class TroublePlanner {

  private TroublePlanner() {}

  /**
   * The troubles of a pour; none where nothing is poured.
   *
   * @param bays the bays of the pour
   * @param sheet the underlayment
   * @param pour as planned
   * @param site what is at hand
   */
  public static Troubles plan(BayPlan bays, DataSheet sheet, Pour pour, TroubleSite site) {
    if (pour.batches().isEmpty()) {
      return new Troubles(0, List.of(), List.of());
    }
    BatchTable table = new BatchTable(pour);
    double standstill = standstill(table, site.mix().healingTime());
    Amount told = Amount.of(standstill, Dimension.TIME);
    boolean holds = pour.verdict() == Verdict.HOLDS && holdsWithOneMixerLess(bays, sheet, site);
    List<Trouble> cases = new ArrayList<>();
    cases.addAll(new MachineTroubles(table, site, told, holds).all());
    cases.addAll(new FloorTroubles(table, site, told).all());
    return new Troubles(standstill, table.stops(), cases);
  }

  /** What is placed before a stop and what after it move apart by no more than the stop. */
  private static double standstill(BatchTable table, double healingTime) {
    double oldest = table.meetsOldestEdge().map(batch -> batch.edgeAge().getAsDouble()).orElse(0.0);
    return Math.max(0, healingTime - oldest);
  }

  /** Reckoned as if the drill were missing from the start. */
  private static boolean holdsWithOneMixerLess(BayPlan bays, DataSheet sheet, TroubleSite site) {
    Crew crew = site.crew();
    if (crew.pumps() || crew.mixers() == 1) {
      return false;
    }
    Crew fewer = crew.with(crew.people(), crew.mixers() - 1, crew.barrels(), crew.bagsPerBatch());
    double age = new Rehearsals(bays, sheet).age(fewer);
    return Healing.of(site.mix().healingTime()).verdict(age) == Verdict.HOLDS;
  }
}
