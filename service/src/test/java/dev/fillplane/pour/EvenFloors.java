package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.RibbonRule;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;

/** Invented floors on which every batch covers the same area. */
final class EvenFloors {

  static final double BAG = 0.015;

  private EvenFloors() {}

  /** One room 1 m wide with ribbons of three quarters of a batch. */
  static BayPlan plan(int batches, double area, int bagsPerBatch) {
    return plan(1, batches, area, bagsPerBatch);
  }

  /** Equal rooms of their own, each poured in one bay. */
  static BayPlan plan(int rooms, int batches, double area, int bagsPerBatch) {
    List<Room> all = new ArrayList<>();
    for (int i = 0; i < rooms; i++) {
      double y = 5.0 * i;
      all.add(
          TestRooms.room(
              "room" + (i + 1),
              TestRooms.rectangle(0, y, batches * area, 1),
              TestRooms.exit(batches * area, y, batches * area, y + 1)));
    }
    RibbonRule rule = new RibbonRule(bagsPerBatch * BAG, 0.75 * area, 0.75 * area, 2000);
    return BayPlan.of(all, TiltedDepths.even(bagsPerBatch * BAG / area), rule);
  }

  /** Nothing lies below the target. */
  static LaidFloor dry() {
    BayPlan plan =
        BayPlan.of(List.of(TestRooms.hall()), TiltedDepths.even(-0.005), TestRooms.BUCKETS);
    return LaidFloor.of(plan, 1, BAG);
  }

  static LaidFloor floor(int batches, double area, int bagsPerBatch) {
    return LaidFloor.of(plan(batches, area, bagsPerBatch), bagsPerBatch, BAG);
  }
}
