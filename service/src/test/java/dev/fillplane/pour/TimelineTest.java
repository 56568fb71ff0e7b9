package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TimelineTest {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final List<Room> ROOMS =
      List.of(
          TestRooms.hall(),
          TestRooms.ell(),
          TestRooms.horseshoe(),
          TestRooms.hallWithColumn(),
          TestRooms.passage());

  /** Every age of the answer, again by {@link PlainAges}. */
  @Test
  void agesAreThoseOfAPlainWalkAlongTheEdges() {
    Random random = new Random(3);
    for (int i = 0; i < 25; i++) {
      Crew crew = Crews.any(random);
      TiltedDepths depths = new TiltedDepths(0.006 + 0.01 * random.nextDouble(), 0.0006, -0.0004);
      double batch = crew.bagsPerBatch() * SHEET.yieldPerBag();
      BayPlan plan = BayPlan.of(List.of(ROOMS.get(i % 5)), depths, crew.ribbons(batch));
      Pour pour = pour(plan, crew);
      Bay bay = plan.bays().get(0);
      PlainAges plain = new PlainAges(pour, bay, batch);
      double oldest = 0;
      for (int r = 0; r < bay.strips().size(); r++) {
        double told = pour.bays().get(0).ribbons().get(r).edgeAge();
        assertEquals(plain.ofStrip(r), told, 1e-6, crew + " ribbon " + (r + 1));
        oldest = Math.max(oldest, told);
      }
      double met = pour.batches().stream().mapToDouble(b -> b.edgeAge().orElse(0)).max().orElse(0);
      assertEquals(oldest, met, 1e-9);
      pour.batches().forEach(b -> assertEquals(b.placed() - b.firstWater(), b.age(), 1e-9));
    }
  }

  @Test
  void batchesAddUp() {
    Random random = new Random(4);
    for (int i = 0; i < 20; i++) {
      Crew crew = Crews.any(random);
      double batch = crew.bagsPerBatch() * SHEET.yieldPerBag();
      TiltedDepths depths = TiltedDepths.even(0.004 + 0.01 * random.nextDouble());
      BayPlan plan = BayPlan.of(List.of(TestRooms.hall(), closet()), depths, crew.ribbons(batch));
      Pour pour = pour(plan, crew);
      for (Bay bay : plan.bays()) {
        double volume =
            pour.batches().stream()
                .filter(b -> b.bay().equals(bay.id()))
                .mapToDouble(Batch::volume)
                .sum();
        assertEquals(bay.fill().volume(), volume, 1e-9);
      }
      PourTotals totals = pour.totals();
      int bags = pour.batches().stream().mapToInt(Batch::bags).sum();
      assertEquals(bags, totals.bags());
      assertEquals(bags * SHEET.yieldPerBag(), totals.volume() + totals.residue(), 1e-9);
      assertEquals(bags * SHEET.waterPerBag(), totals.water(), 1e-12);
      assertTrue(totals.residue() < 2 * SHEET.yieldPerBag(), "under a bag a bay");
    }
  }

  /** What people do adds up to the time for which they are busy, one piece after the other. */
  @Test
  void tasksAddUpToTheTimeAtWork() {
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      Crew crew = Crews.any(random);
      double batch = crew.bagsPerBatch() * SHEET.yieldPerBag();
      BayPlan plan =
          BayPlan.of(
              List.of(TestRooms.hall(), closet()), TiltedDepths.even(0.009), crew.ribbons(batch));
      Pour pour = pour(plan, crew);
      for (Worker worker : pour.workers()) {
        double busy = 0;
        double end = 0;
        for (Task task : worker.tasks()) {
          assertTrue(task.from() >= end && task.to() >= task.from(), crew + " " + task);
          assertTrue(task.batch().orElse(1) <= pour.batches().size(), task.toString());
          assertTrue(worker.roles().contains(task.role()));
          end = task.to();
          busy += task.to() - task.from();
        }
        assertEquals(worker.busy(), busy, 1e-6, crew.toString());
        assertTrue(end <= pour.totals().end() + 1e-9, "after the end");
      }
    }
  }

  /** Batches of one bay follow those of the other by one clock, and reach into its ribbons. */
  @Test
  void oneClockAndOneCountOfRibbons() {
    BayPlan plan =
        BayPlan.of(
            List.of(TestRooms.hall(), closet()), TiltedDepths.even(0.009), TestRooms.BUCKETS);
    Pour pour = pour(plan, Crew.usual());
    for (int i = 1; i < pour.batches().size(); i++) {
      Batch last = pour.batches().get(i - 1);
      Batch next = pour.batches().get(i);
      assertEquals(240, next.placed() - last.placed(), 1e-9);
      assertTrue(next.firstRibbon() >= last.lastRibbon());
      assertTrue(next.firstRibbon() <= last.lastRibbon() + 1);
    }
    Ribbon end = pour.bays().get(1).ribbons().get(pour.bays().get(1).ribbons().size() - 1);
    assertEquals(end.order(), pour.batches().get(pour.batches().size() - 1).lastRibbon());
    assertEquals(end.end(), pour.minutes(), 1e-9);
  }

  @Test
  void timesByTheClock() {
    Pour pour = pour(passage(), Crews.starting("23:58"));
    // Bags opened at 30 s, ready at 270 s, placed at 305 s.
    assertEquals(
        Optional.of(new BatchClock("23:58", "00:02", "00:03")), pour.batches().get(0).clock());
    assertTrue(pour.totals().finish().isPresent());
    Pour untold = pour(passage(), Crew.usual());
    assertTrue(untold.batches().stream().allMatch(batch -> batch.clock().isEmpty()));
    assertEquals(Optional.empty(), untold.totals().finish());
  }

  /** Three people, one mixer: one mixes, one carries; whoever the crew does not need stands by. */
  @Test
  void workersAndTheirRoles() {
    Pour pour = pour(passage(), Crew.of(9, 1, 2, 1));
    assertEquals(9, pour.workers().size());
    assertEquals(Role.MIX, pour.workers().get(0).roles().get(0));
    assertTrue(pour.workers().get(1).roles().contains(Role.CARRY_AND_POUR));
    assertEquals(List.of(), pour.workers().get(8).roles());
    assertEquals(0, pour.workers().get(8).busy());
    assertEquals(pour.minutes(), pour.workers().get(8).waiting(), 1e-9);
    for (Worker worker : pour.workers()) {
      assertTrue(worker.busy() + worker.waiting() <= pour.totals().end() + 15 + 1e-9);
    }
    assertEquals(Optional.of(Stage.MIXING), pour.workers().get(1).waitsFor());
  }

  private static Room closet() {
    return TestRooms.room("closet", TestRooms.rectangle(10, 0, 1, 1));
  }

  private static BayPlan passage() {
    return BayPlan.of(List.of(TestRooms.passage()), TiltedDepths.even(0.008), TestRooms.BUCKETS);
  }

  private static Pour pour(BayPlan plan, Crew crew) {
    return PourPlanner.plan(plan, SHEET, crew, Healing.of(600), List.of());
  }
}
