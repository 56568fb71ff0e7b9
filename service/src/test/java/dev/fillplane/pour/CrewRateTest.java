package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import org.junit.jupiter.api.Test;

class CrewRateTest {

  // 3 m2 a bag: 15 L at 5 mm.
  private static final double AREA = 3;
  private static final double HOUR = 3600;

  /** 12 to 18 bags an hour from one mixer with 1-bag buckets: common practice, no source. */
  @Test
  void oneMixerWithBuckets() {
    for (int people = 2; people <= 5; people++) {
      double bags = HOUR / fastest(people, 1, 1).interval();
      assertTrue(bags >= 12 && bags <= 18, people + " people: " + bags);
    }
  }

  /** 25 to 30 bags an hour from one mixer with 2-bag barrels: common practice, no source. */
  @Test
  void oneMixerWithBarrelsAndThreePeople() {
    double bags = 2 * HOUR / fastest(3, 1, 2).interval();
    assertTrue(bags >= 25 && bags <= 30, "" + bags);
  }

  /** 3 to 5 minutes are gone when a batch is placed: common practice, no source. */
  @Test
  void placedThreeToFiveMinutesAfterFirstWater() {
    for (int bags = 1; bags <= 2; bags++) {
      for (int people = 1; people <= 4; people++) {
        double minutes = fastest(people, 1, bags).untilPlaced() / 60;
        assertTrue(minutes >= 3 && minutes <= 5, people + " people: " + minutes);
      }
    }
  }

  @Test
  void onePersonDoesEverythingInTurn() {
    CrewRate alone = fastest(1, 2, 1);
    // 60 charge + 180 mix + 50 carry and pour + 3 m2 at 20 s.
    assertEquals(350, alone.interval(), 1e-9);
    assertEquals(Stage.PEOPLE, alone.slowest());
  }

  @Test
  void slowestStageSetsTheBeat() {
    assertEquals(Stage.MIXING, fastest(3, 1, 1).slowest());
    // Two mixers make a batch in 120 s, one pair of hands needs 50 + 60 s for it.
    assertEquals(120, fastest(3, 2, 1).interval(), 1e-9);
    // Four mixers: 60 s, but two pairs of hands 55 s each: mixing still; thinner floor: hands.
    assertEquals(Stage.MIXING, fastest(6, 4, 1).slowest());
    assertEquals(Stage.PEOPLE, CrewRate.choices(crew(6, 4, 8, 1), work(1, 5)).get(4).slowest());
    // A single barrel is away for 240 + 50 s.
    CrewRate barrel = CrewRate.choices(crew(3, 1, 1, 1), work(1, AREA)).get(1);
    assertEquals(290, barrel.interval(), 1e-9);
    assertEquals(Stage.BARRELS, barrel.slowest());
  }

  private static CrewRate fastest(int people, int mixers, int bags) {
    return CrewRate.choices(crew(people, mixers, 2 * mixers, bags), work(bags, bags * AREA))
        .stream()
        .min(Comparator.comparingDouble(CrewRate::interval))
        .orElseThrow();
  }

  private static Crew crew(int people, int mixers, int barrels, int bags) {
    return new Crew(people, mixers, barrels, bags);
  }

  private static BatchWork work(int bags, double area) {
    return new BatchWork(180, bags, area);
  }
}
