package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RehearsalsTest {

  private static final DataSheet SHEET = TestSheets.usual();

  /** The reason why more never worsens anything. */
  @Test
  void waysOfASmallerCrewAreAmongThoseOfALargerOne() {
    Random random = new Random(1);
    for (int i = 0; i < 300; i++) {
      Crew crew = Crews.any(random);
      Crew more = Crews.more(crew, random);
      assertTrue(new HashSet<>(Way.of(more, 50)).containsAll(Way.of(crew, 50)), crew + " " + more);
    }
  }

  @Test
  void moreOfAnythingNeverWorsensAnything() {
    Random random = new Random(2);
    List<Room> rooms =
        List.of(TestRooms.hall(), TestRooms.ell(), TestRooms.horseshoe(), TestRooms.passage());
    for (int i = 0; i < 60; i++) {
      TiltedDepths depths = TiltedDepths.even(0.003 + 0.015 * random.nextDouble());
      Crew crew = Crews.any(random);
      double batch = crew.bagsPerBatch() * SHEET.yieldPerBag();
      BayPlan plan = BayPlan.of(List.of(rooms.get(i % 4)), depths, crew.ribbons(batch));
      Rehearsals rehearsals = new Rehearsals(plan, SHEET);
      double age = rehearsals.age(crew);
      for (int k = 0; k < 5; k++) {
        Crew more = Crews.more(crew, random);
        assertTrue(rehearsals.age(more) <= age, crew + " " + more);
      }
      double healing = 200 + 1000 * random.nextDouble();
      Verdict verdict = rehearsals.best(crew, Healing.of(healing)).verdict();
      assertTrue(
          rehearsals.best(crew, Healing.of(healing * 1.2)).verdict().compareTo(verdict) <= 0);
      assertEquals(age, rehearsals.best(crew, Healing.of(healing)).ages().deciding());
    }
  }

  /** Two mixers run as one where one is better: it is all the same to the floor. */
  /** Runs that are left early, for this crew or for one before it, hide no better way. */
  @Test
  void theBestWayIsThatOfFollowingEveryWayToItsEnd() {
    Random random = new Random(3);
    for (int i = 0; i < 20; i++) {
      BayPlan plan = EvenFloors.plan(5 + random.nextInt(15), 1 + random.nextInt(3), 1);
      Rehearsals rehearsals = new Rehearsals(plan, SHEET);
      Crew small = Crews.any(random);
      Crew larger = Crews.more(small, random);
      Crew largest = Crews.more(larger, random);
      for (Crew crew : List.of(largest, small, larger, largest)) {
        FloorPour plainly = plainly(plan, crew);
        FloorPour best = rehearsals.best(crew, Healing.of(600));
        assertEquals(plainly.way(), best.way());
        assertEquals(plainly.ages(), best.ages());
        assertEquals(plainly.ages().deciding(), rehearsals.age(crew));
      }
    }
  }

  private static FloorPour plainly(BayPlan plan, Crew crew) {
    LaidFloor floor = LaidFloor.of(plan, crew.bagsPerBatch(), SHEET.yieldPerBag());
    FloorPour best = null;
    for (Way way : Way.of(crew, floor.batches())) {
      CrewRun run = CrewRun.of(floor, TaskTimes.of(crew, SHEET), way, crew);
      FloorPour next = new FloorPour(floor, crew, way, run, Healing.of(600));
      boolean younger = best == null || next.ages().deciding() < best.ages().deciding();
      boolean asOld = best != null && next.ages().deciding() == best.ages().deciding();
      best = younger || (asOld && next.duration() < best.duration()) ? next : best;
    }
    return best;
  }

  @Test
  void aWayIsTheBestOfAll() {
    BayPlan plan = EvenFloors.plan(20, 3, 1);
    Crew crew = Crew.of(4, 2, 4, 1);
    double best = new Rehearsals(plan, SHEET).age(crew);
    LaidFloor floor = LaidFloor.of(plan, 1, SHEET.yieldPerBag());
    double least = Double.MAX_VALUE;
    for (int people = 1; people <= 4; people++) {
      for (int mixers = 1; mixers <= Math.min(people, 2); mixers++) {
        for (int barrels = mixers; barrels <= Math.min(4, 3 * mixers); barrels++) {
          Way way = new Way(people, mixers, barrels, 0);
          CrewRun run = CrewRun.of(floor, TaskTimes.of(crew, SHEET), way, crew);
          least = Math.min(least, Ages.of(floor, run).deciding());
        }
      }
    }
    assertEquals(least, best);
  }

  /** Common practice, no source: three barrels filled beforehand help at the start. */
  @Test
  void filledBarrelsHelp() {
    Rehearsals rehearsals = new Rehearsals(EvenFloors.plan(3, 3, 1), SHEET);
    double dry = rehearsals.best(Crews.filled(1, 1, 3, 0, 1), Healing.of(600)).duration();
    double filled = rehearsals.best(Crews.filled(1, 1, 3, 3, 1), Healing.of(600)).duration();
    assertTrue(filled < dry - 60, filled + " against " + dry);
    assertTrue(
        rehearsals.age(Crews.filled(1, 1, 3, 3, 1)) < rehearsals.age(Crews.filled(1, 1, 3, 0, 1)),
        "the first edges are met sooner");
  }

  @Test
  void aLongerWayAndLongerMixingCost() {
    Rehearsals rehearsals = new Rehearsals(EvenFloors.plan(6, 3, 1), SHEET);
    double usual = rehearsals.age(Crews.carrying(15));
    // 25 s more to the floor; the mixer goes on at its pace.
    assertEquals(usual + 25, rehearsals.age(Crews.carrying(40)), 1e-9);
    // 60 s more for the batch that made the edge and for the one that meets it.
    assertEquals(usual + 120, rehearsals.age(Crews.mixing(240)), 1e-9);
    assertEquals(usual, rehearsals.age(Crews.mixing(100)), 1e-9, "never under the sheet");
  }

  /**
   * One bag on 20 m2: on the floor 215 s after its first water, raked 200 s, rolled 200 s, so at an
   * age of 615 s. The edges would hold at a healing time of 600 s; the roller leaves marks.
   */
  @Test
  void lateRollingDoesNotHold() {
    Rehearsals rehearsals = new Rehearsals(EvenFloors.plan(1, 20, 1), SHEET);
    FloorPour pour = rehearsals.best(Crew.usual(), Healing.of(600));
    assertEquals(215, pour.ages().edge(), 1e-9);
    assertEquals(615, pour.ages().roll(), 1e-9);
    assertEquals(Verdict.TIGHT, pour.verdict());
    TaskTimes times = TaskTimes.of(Crew.usual(), SHEET);
    assertTrue(
        Reasons.of(pour, times).stream().anyMatch(reason -> reason.code().equals("rolled-late")));
    assertEquals(Verdict.HOLDS, rehearsals.best(Crew.usual(), Healing.of(620)).verdict());
  }

  /** A lane of 3 m by hose: a bag is on the floor 50 s after its first water. */
  @Test
  void pump() {
    Rehearsals rehearsals = new Rehearsals(EvenFloors.plan(20, 4.7, 1), SHEET);
    FloorPour pour = rehearsals.best(Crews.pump(3), Healing.of(600));
    assertEquals(50, pour.ages().batch(), 1e-9);
    assertEquals(Verdict.HOLDS, pour.verdict());
    assertEquals(20 * 25 + 25, pour.duration(), 1e-9);
  }
}
