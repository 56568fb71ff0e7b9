package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.material.DataSheet;
import java.util.List;

/**
 * The pour of all bays by one crew.
 *
 * @param bays in the order of the pour
 * @param crew who pours
 * @param healingTime from first water until an edge no longer closes
 */
record FloorPour(List<BayPour> bays, Crew crew, double healingTime) {

  /** Share of the healing time that is kept back (common practice, no source). */
  static final double RESERVE = 0.25;

  static FloorPour of(BayPlan plan, DataSheet sheet, Crew crew, double healingTime) {
    List<BayPour> bays = plan.bays().stream().map(bay -> BayPour.best(bay, sheet, crew)).toList();
    return new FloorPour(bays, crew, healingTime);
  }

  /** The bay with the oldest edge, the first of several; there is at least one. */
  BayPour worst() {
    BayPour worst = bays.get(0);
    for (BayPour bay : bays) {
      worst = bay.oldest() > worst.oldest() ? bay : worst;
    }
    return worst;
  }

  Verdict verdict() {
    double oldest = worst().oldest();
    if (oldest <= (1 - RESERVE) * healingTime) {
      return Verdict.HOLDS;
    }
    return oldest <= healingTime ? Verdict.TIGHT : Verdict.BREAKS;
  }

  boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  /** Oldest edge as a share of the healing time. */
  double strain() {
    return healingTime > 0 ? worst().oldest() / healingTime : Double.MAX_VALUE;
  }
}
