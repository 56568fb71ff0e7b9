package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import java.util.ArrayList;
import java.util.List;

/** The batches of a floor, one bay after the other, before anybody mixes them. */
final class LaidFloor {

  /** Areas go to the square centimetre, so that rounding on plan tips no order of events. */
  private static final double AREA_STEP = 1e-4;

  private final List<LaidBay> bays;
  private final Meetings meetings;
  private final int[] bags;
  private final double[] areas;
  private final int[] oldestMet;
  private final boolean[] opensBay;

  private LaidFloor(List<LaidBay> bays, int batches, double yieldPerBag) {
    this.bays = List.copyOf(bays);
    meetings = Meetings.of(bays);
    bags = new int[batches];
    areas = new double[batches];
    oldestMet = meetings.oldestMet(batches);
    opensBay = new boolean[batches];
    for (LaidBay bay : bays) {
      double[] covered = bay.areas();
      for (int i = 0; i < covered.length; i++) {
        int batch = bay.firstBatch() + i;
        bags[batch] = Math.max(1, LaidStrip.batches(bay.volume(i), yieldPerBag));
        areas[batch] = Math.rint(covered[i] / AREA_STEP) * AREA_STEP;
        opensBay[batch] = i == 0 && batch > 0;
      }
    }
  }

  /**
   * Lays batches of {@code bagsPerBatch} bags.
   *
   * @param yieldPerBag volume of a bag
   */
  static LaidFloor of(BayPlan plan, int bagsPerBatch, double yieldPerBag) {
    List<LaidBay> bays = new ArrayList<>();
    int batches = 0;
    int ribbons = 0;
    for (Bay bay : plan.bays()) {
      LaidBay laid = LaidBay.of(bay, bagsPerBatch * yieldPerBag, batches, ribbons);
      bays.add(laid);
      batches += laid.batches();
      ribbons += laid.strips().size();
    }
    return new LaidFloor(bays, batches, yieldPerBag);
  }

  List<LaidBay> bays() {
    return bays;
  }

  /** Which batches meet which edges. */
  Meetings meetings() {
    return meetings;
  }

  int batches() {
    return bags.length;
  }

  int bags(int batch) {
    return bags[batch];
  }

  /** The first batch whose edge a batch meets; itself if it meets none of an earlier one. */
  int oldestMet(int batch) {
    return oldestMet[batch];
  }

  /** Floor that a batch covers. */
  double area(int batch) {
    return areas[batch];
  }

  /** Whether it is the first batch of a bay after the first one. */
  boolean opensBay(int batch) {
    return opensBay[batch];
  }
}
