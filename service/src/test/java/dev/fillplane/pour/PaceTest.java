package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.material.DataSheet;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Crews in the long run, against the closed form and against published and usual rates. */
class PaceTest {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final double HOUR = 3600;
  private static final int FROM = 100;
  private static final int TO = 220;

  /** Rate = least of the rates of the stages: buckets of one bag never wait for each other. */
  @Test
  void inTheLongRunTheSlowestStageSetsThePace() {
    for (double area : new double[] {1, 3, 4.7}) {
      LaidFloor floor = EvenFloors.floor(TO, area, 1);
      for (Way way : Way.of(Crew.of(8, 3, 9, 1), TO)) {
        Crew crew = Crew.of(way.people(), way.mixers(), way.barrels(), 1);
        double pace = pace(way, crew, area).interval();
        assertEquals(pace, interval(way, crew, floor), 0.05 * pace, way + " on " + area);
      }
    }
  }

  /** With more bags a mix may be held up, but nobody is faster than the slowest stage. */
  @Test
  void nobodyIsFasterThanTheSlowestStage() {
    for (double area : new double[] {2, 6, 9.4}) {
      LaidFloor floor = EvenFloors.floor(TO, area, 2);
      for (Way way : Way.of(Crew.of(8, 3, 9, 2), TO)) {
        Crew crew = Crew.of(way.people(), way.mixers(), way.barrels(), 2);
        double pace = pace(way, crew, area).interval();
        double interval = interval(way, crew, floor);
        assertTrue(interval >= 0.99 * pace, way + " on " + area + ": " + interval);
        assertTrue(interval <= 1.35 * pace, way + " on " + area + ": " + interval);
      }
    }
  }

  @Test
  void everyStageCanBeTheSlowest() {
    // 240 s under one mixer; 30 + 240 + 50 + 60 = 380 person-seconds; a barrel is away 320 s.
    assertPace(240, Stage.MIXING, new Way(3, 1, 2, 0), Crew.of(3, 1, 2, 1), 3);
    assertPace(380, Stage.PEOPLE, new Way(1, 1, 2, 0), Crew.of(1, 1, 2, 1), 3);
    assertPace(320, Stage.BARRELS, new Way(3, 1, 1, 0), Crew.of(3, 1, 1, 1), 3);
    assertPace(300, Stage.WATER, new Way(4, 1, 3, 0), slowTap(), 3);
    assertPace(25, Stage.PUMP, new Way(3, 1, 1, 0), pump(), 4.7);
  }

  /** 12 to 18 bags an hour from one mixer with 1-bag buckets: common practice, no source. */
  @Test
  void oneMixerWithBuckets() {
    for (int people = 2; people <= 5; people++) {
      double bags = HOUR / interval(new Way(people, 1, 2, 0), Crew.of(people, 1, 2, 1), 3);
      assertTrue(bags >= 12 && bags <= 18, people + " people: " + bags);
    }
  }

  /**
   * ProInstaller magazine, Sept-Oct 2021, p. 10: a crew of three with barrels lays about 1,500 ft2
   * an hour (seen in the source). At 1/8 in and 15 L a bag that is 29.5 bags an hour; 25 to 30 from
   * one mixer with 2-bag barrels is common practice, no source. TileLetter, Oct 2019, p. 76: at
   * most 2 bags a barrel.
   */
  @Test
  void threePeopleWithBarrelsAndOneMixer() {
    double area = 2 * 0.015 / (0.0254 / 8);
    double interval = interval(new Way(3, 1, 2, 0), Crew.of(3, 1, 2, 2), area);
    double bags = 2 * HOUR / interval;
    assertTrue(bags >= 25 && bags <= 30, "" + bags);
    assertEquals(1500, area / (0.3048 * 0.3048) * HOUR / interval, 150);
  }

  /**
   * The same magazine: three with a pump about 7,000 ft2 an hour (seen in the source). 80 to 160
   * bags an hour: common practice, no source.
   */
  @Test
  void threePeopleWithAPump() {
    double area = 0.015 / (0.0254 / 8);
    double interval = interval(new Way(3, 1, 1, 0), pump(), area);
    double bags = HOUR / interval;
    assertTrue(bags >= 80 && bags <= 160, "" + bags);
    assertEquals(7000, area / (0.3048 * 0.3048) * HOUR / interval, 700);
  }

  /**
   * Cross-check of the same rate at 1/4 in: 60 bags an hour need two or more barrels in rotation
   * (derived). With one mixer nobody gets there, with two of them and four barrels of two bags a
   * crew of five does.
   */
  @Test
  void sixtyBagsAnHourNeedTwoMixers() {
    double area = 2 * 0.015 / (0.0254 / 4);
    assertTrue(2 * HOUR / interval(new Way(6, 1, 3, 0), Crew.of(6, 1, 3, 2), area) < 31);
    assertTrue(2 * HOUR / interval(new Way(5, 2, 4, 0), Crew.of(5, 2, 4, 2), area) > 57);
  }

  /** 3 to 5 minutes are gone when a batch is placed: common practice, no source. */
  @Test
  void placedThreeToFiveMinutesAfterFirstWater() {
    for (int bags = 1; bags <= 2; bags++) {
      LaidFloor floor = EvenFloors.floor(TO, bags * 3, bags);
      for (Way way : Way.of(Crew.of(8, 3, 9, 1), TO)) {
        Crew crew = Crew.of(way.people(), way.mixers(), way.barrels(), bags);
        CrewRun run = run(way, crew, floor);
        for (int i = 0; i < TO; i++) {
          double minutes = (run.placed(i) - run.firstWater(i)) / 60;
          assertTrue(minutes >= 3 && minutes <= 5, way + " batch " + i + ": " + minutes);
        }
      }
    }
  }

  private static void assertPace(double interval, Stage slowest, Way way, Crew crew, double area) {
    assertEquals(interval, pace(way, crew, area).interval(), 1e-9);
    assertEquals(slowest, pace(way, crew, area).slowest());
    assertEquals(interval, interval(way, crew, area), 1e-6);
  }

  private static Pace pace(Way way, Crew crew, double area) {
    TaskTimes times = TaskTimes.of(crew, SHEET);
    return Pace.of(times, way, crew.bagsPerBatch(), area, crew.pumps());
  }

  private static double interval(Way way, Crew crew, double area) {
    return interval(way, crew, EvenFloors.floor(TO, area, crew.bagsPerBatch()));
  }

  private static double interval(Way way, Crew crew, LaidFloor floor) {
    CrewRun run = run(way, crew, floor);
    return (run.placed(TO - 1) - run.placed(FROM)) / (TO - 1 - FROM);
  }

  private static CrewRun run(Way way, Crew crew, LaidFloor floor) {
    return CrewRun.of(floor, TaskTimes.of(crew, SHEET), way, crew);
  }

  private static Crew slowTap() {
    return crew(Placing.BARREL, 300);
  }

  private static Crew pump() {
    return crew(Placing.PUMP, 30);
  }

  private static Crew crew(Placing placing, double waterTime) {
    OptionalDouble none = OptionalDouble.empty();
    return new Crew(4, 1, 3, null, 1, placing, null, waterTime, none, null, null, Optional.empty());
  }
}
