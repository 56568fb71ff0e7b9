package dev.fillplane.pour;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Invented crews. */
final class Crews {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private Crews() {}

  static Crew filled(int people, int mixers, int barrels, int preFilled, int bags) {
    return new Crew(
        people,
        mixers,
        barrels,
        preFilled,
        bags,
        null,
        null,
        null,
        NONE,
        null,
        null,
        Optional.empty());
  }

  static Crew any(Random random) {
    int barrels = 1 + random.nextInt(6);
    return filled(
        1 + random.nextInt(6),
        1 + random.nextInt(3),
        barrels,
        random.nextInt(barrels + 1),
        1 + random.nextInt(2));
  }

  /** Some more of one or more things. */
  static Crew more(Crew crew, Random random) {
    int barrels = crew.barrels() + random.nextInt(4);
    return filled(
        crew.people() + random.nextInt(3),
        crew.mixers() + random.nextInt(2),
        barrels,
        Math.min(barrels, crew.preFilled() + random.nextInt(3)),
        crew.bagsPerBatch());
  }

  static Crew pump(int people) {
    return new Crew(
        people,
        null,
        null,
        null,
        null,
        Placing.PUMP,
        null,
        null,
        NONE,
        null,
        null,
        Optional.empty());
  }

  static Crew starting(String start) {
    return new Crew(3, 1, 2, null, 1, null, null, null, NONE, null, null, Optional.of(start));
  }

  static Crew carrying(double distance) {
    return new Crew(3, 1, 2, null, 1, null, distance, null, NONE, null, null, Optional.empty());
  }

  static Crew mixing(double mixTime) {
    OptionalDouble told = OptionalDouble.of(mixTime);
    return new Crew(3, 1, 2, null, 1, null, null, null, told, null, null, Optional.empty());
  }
}
