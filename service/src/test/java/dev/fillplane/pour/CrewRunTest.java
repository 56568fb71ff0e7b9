package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.material.DataSheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Runs worked by hand. A batch of one bag: 30 s water, 60 s to open the bags and 180 s to mix, 15 s
 * to carry, 20 s to pour, 15 s back; it covers 3 m2: 30 s to rake, 30 s to roll.
 */
class CrewRunTest {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final double AREA = 3;

  /**
   * Two people (A, B), one mixer, two barrels. A measures 0 to 30, mixes 30 to 270 and from then on
   * without a stop: 270 to 510, 510 to 750. B measures the second barrel 30 to 60 and waits. Each
   * batch: B carries from when it is mixed, 35 s later it is on the floor, 50 s later B is back,
   * rakes 30 s, rolls 30 s, measures 30 s and waits 100 s for the next one. The last batch is raked
   * and rolled by A, who mixes no more, from the moment that it is on the floor.
   */
  @Test
  void oneMixer() {
    CrewRun run = run(3, AREA, Crew.of(2, 1, 2, 1), new Way(2, 1, 2, 0));
    assertTimes(run::mixStart, 30, 270, 510);
    assertTimes(run::firstWater, 90, 330, 570);
    assertTimes(run::ready, 270, 510, 750);
    assertTimes(run::placed, 305, 545, 785);
    assertTimes(run::rolled, 380, 620, 845);
    assertEquals(3 * 240, run.people().busy(0, Role.MIX), 1e-9);
    assertEquals(30, run.people().busy(0, Role.MEASURE_WATER), 1e-9);
    assertEquals(0, run.people().busy(0, Role.CARRY_AND_POUR), 1e-9);
    assertEquals(3 * 50, run.people().busy(1, Role.CARRY_AND_POUR), 1e-9);
    assertEquals(2 * 30, run.people().busy(1, Role.SPIKE_ROLL), 1e-9);
    // A waits 35 s while the last batch is carried. B waits 30 s for the tap, then from 60 to 270,
    // from 410 to 510 and, with no water left to measure, from 620 to 750.
    assertEquals(35, run.people().waiting(0), 1e-9);
    assertEquals(30 + 210 + 100 + 130, run.people().waiting(1), 1e-9);
    assertEquals(Stage.MIXING, run.people().waitedFor(1));
  }

  /** The same run, told person by person. */
  @Test
  void oneMixerByPerson() {
    Crew crew = Crew.of(2, 1, 2, 1);
    TaskList tasks = new TaskList(2);
    LaidFloor floor = EvenFloors.floor(3, AREA, 1);
    CrewRun.of(floor, TaskTimes.of(crew, SHEET), new Way(2, 1, 2, 0), crew, tasks);
    assertEquals(
        "measure-water 1 0-30, mix 1 30-270, mix 2 270-510, mix 3 510-750, rake 3 785-815,"
            + " spike-roll 3 815-845",
        told(tasks.of(0).subList(0, 6)));
    assertEquals(
        "measure-water 2 30-60, carry-and-pour 1 270-320, rake 1 320-350, spike-roll 1 350-380,"
            + " measure-water 3 380-410, carry-and-pour 2 510-560",
        told(tasks.of(1).subList(0, 6)));
  }

  private static String told(List<Task> tasks) {
    return tasks.stream()
        .map(
            task ->
                String.format(
                    Locale.ROOT,
                    "%s %d %.0f-%.0f",
                    task.role().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    task.batch().orElseThrow(),
                    task.from(),
                    task.to()))
        .collect(Collectors.joining(", "));
  }

  /**
   * Three people (A, B, C), two mixers, four barrels. A measures 0 to 30 and mixes batch 1 30 to
   * 270; B measures three barrels until 120 and mixes batch 2 from 150, half a turn later, to 390.
   * C carries batch 1 (305), rakes 320, rolls 350, measures 380 to 410; A mixes batch 3 270 to 510.
   * At 390 all others are busy, so B carries batch 2 (425), rakes 440, rolls 470, measures 500 to
   * 530; C mixes batch 4 only when the water is measured, 410 to 650. At 510 A carries batch 3
   * (545), rakes 560, rolls 590, measures no more as six barrels are done, and is there at 650 to
   * carry batch 4 (685).
   */
  @Test
  void twoMixers() {
    CrewRun run = run(6, AREA, Crew.of(3, 2, 4, 1), new Way(3, 2, 4, 0));
    assertTimes(run::mixStart, 30, 150, 270, 410);
    assertTimes(run::placed, 305, 425, 545, 685);
  }

  /** Alone: 30 water, 240 mix, 50 carry, 30 rake, 30 roll; 380 s a batch. */
  @Test
  void alone() {
    CrewRun run = run(3, AREA, Crew.of(1, 1, 1, 1), new Way(1, 1, 1, 0));
    assertTimes(run::placed, 305, 685, 1065);
    assertTimes(run::rolled, 380, 760, 1140);
    assertEquals(0, run.people().waiting(0), 1e-9);
  }

  /**
   * Two barrels filled beforehand: alone, batch 1 is mixed from 0 to 240, poured 275, back 290,
   * rolled 350; batch 2 is mixed at once, 350 to 590, poured 625, rolled 700; then water until 730
   * and batch 3: mixed 970, poured 1005.
   */
  @Test
  void filledBarrelsHelpAtTheStart() {
    CrewRun run = run(3, AREA, Crew.of(1, 1, 2, 1), new Way(1, 1, 2, 2));
    assertTimes(run::placed, 275, 625, 1005);
    assertTimes(run::rolled, 350, 700, 1080);
  }

  /** A break from 200 to 1200: batch 1 is placed, raked and rolled, batch 2 begins at 1200. */
  @Test
  void nothingIsBegunInABreak() {
    Crew crew = crew(List.of(new Break(200, 1000)), 0);
    CrewRun run = run(2, AREA, crew, new Way(3, 1, 2, 0));
    assertTimes(run::mixStart, 30, 1200);
    assertTimes(run::placed, 305, 1475);
    assertTimes(run::rolled, 365, 1535);
    assertEquals(Stage.BREAK, run.people().waitedFor(2));
  }

  /**
   * Two bays of one batch, 600 s to set up between: the first is placed at 305, the second at 905
   * plus 35 s from the mixer, ready at 905: mixed from 665.
   */
  @Test
  void firstBatchOfABayIsReadyWhenTheBayIs() {
    Crew crew = crew(List.of(), 600);
    LaidFloor floor = LaidFloor.of(EvenFloors.plan(2, 1, AREA, 1), 1, EvenFloors.BAG);
    CrewRun run = CrewRun.of(floor, TaskTimes.of(crew, SHEET), new Way(3, 1, 2, 0), crew);
    assertTimes(run::mixStart, 30, 665);
    assertTimes(run::ready, 270, 905);
    assertTimes(run::placed, 305, 940);
  }

  /** Bays without a stop between them are poured as if they were one. */
  @Test
  void oneClockForAllBays() {
    Crew crew = Crew.of(3, 1, 2, 1);
    LaidFloor floor = LaidFloor.of(EvenFloors.plan(3, 2, AREA, 1), 1, EvenFloors.BAG);
    CrewRun bays = CrewRun.of(floor, TaskTimes.of(crew, SHEET), new Way(3, 1, 2, 0), crew);
    CrewRun one = run(6, AREA, crew, new Way(3, 1, 2, 0));
    assertArrayEquals(times(one::placed, 6), times(bays::placed, 6));
  }

  /** Nothing to pour, nothing to do. */
  @Test
  void noBatches() {
    Crew crew = Crew.usual();
    TaskTimes times = TaskTimes.of(crew, SHEET);
    CrewRun run = CrewRun.of(EvenFloors.dry(), times, new Way(3, 1, 2, 0), crew);
    assertEquals(0, run.end());
    assertEquals(0, run.people().waiting(0));
  }

  /** Whatever the crew: mixers, tap, barrels and people are never in two places at once. */
  @Test
  void nothingIsUsedTwiceAtOnce() {
    List<LaidFloor> floors = List.of(EvenFloors.floor(40, 2, 1), EvenFloors.floor(40, 4, 2));
    for (Way way : Way.of(Crews.filled(6, 3, 8, 3, 1), 40)) {
      int bags = 1 + way.people() % 2;
      Crew crew = Crew.of(way.people(), way.mixers(), way.barrels(), bags);
      LaidFloor floor = floors.get(bags - 1);
      CrewRun run = CrewRun.of(floor, TaskTimes.of(crew, SHEET), way, crew);
      for (int i = 1; i < 40; i++) {
        String who = way + " batch " + i;
        assertTrue(run.placed(i) >= run.placed(i - 1), who);
        assertTrue(run.placed(i) >= run.ready(i) + 35 - 1e-9, who);
        if (i >= way.mixers()) {
          assertTrue(run.mixStart(i) >= run.ready(i - way.mixers()) - 1e-9, who + " mixers");
        }
        if (i >= way.barrels()) {
          double back = run.placed(i - way.barrels()) + 15;
          assertTrue(run.mixStart(i) >= back + 30 * bags - 1e-9, who + " barrels");
        }
      }
      double work = 0;
      for (int person = 0; person < way.people(); person++) {
        double busy = 0;
        for (Role role : Role.values()) {
          busy += run.people().busy(person, role);
        }
        assertTrue(busy <= run.end() + 15 + 1e-9, way + " busy " + busy);
        work += busy;
      }
      double batch = 240 + bags * 50 + bags * 2 * 20 + bags * 30;
      double filled = 30 * bags * way.preFilled();
      double washing = 60 * (way.mixers() + way.barrels());
      assertEquals(40 * batch - filled + washing, work, 1e-6, way.toString());
    }
  }

  private static Crew crew(List<Break> breaks, double betweenBays) {
    OptionalDouble none = OptionalDouble.empty();
    return new Crew(
        3, 1, 2, null, 1, null, null, null, none, betweenBays, breaks, Optional.empty());
  }

  private static CrewRun run(int batches, double area, Crew crew, Way way) {
    LaidFloor floor = EvenFloors.floor(batches, area, crew.bagsPerBatch());
    return CrewRun.of(floor, TaskTimes.of(crew, SHEET), way, crew);
  }

  private interface Time {
    double of(int batch);
  }

  private static double[] times(Time time, int batches) {
    double[] times = new double[batches];
    for (int i = 0; i < batches; i++) {
      times[i] = time.of(i);
    }
    return times;
  }

  private static void assertTimes(Time time, double... wanted) {
    assertArrayEquals(wanted, times(time, wanted.length), 1e-9);
  }
}
