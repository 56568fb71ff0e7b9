package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * The cases of one run. Each has its own chance, from the seed and its number alone, so that one
 * can be run again without those before it.
 *
 * @param name of the test
 * @param share one in how many of the cases of a run this test is given, as its cases are dear
 */
record FuzzRun(String name, int share) {

  private static final int USUAL_CASES = 500;
  private static final int SHOWN = 5;
  private static final String ONE = "fuzz.case";

  static final long SEED = Long.getLong("fuzz.seed", 1);

  /** One case; the complaint if there is one. */
  interface Case {
    Optional<String> run(int number, Random random);
  }

  /** Whether one case alone is run again, of which no shares can be told. */
  static boolean isReplay() {
    return Integer.getInteger(ONE) != null;
  }

  /** How many cases there are. */
  int cases() {
    return Math.max(1, Integer.getInteger("fuzz.cases", USUAL_CASES) / share);
  }

  /** Runs the cases, or the one that is asked for, and fails with the first complaints. */
  void each(Case one) {
    System.out.println(name + ": " + cases() + " cases, -Dfuzz.seed=" + SEED);
    Integer only = Integer.getInteger(ONE);
    List<String> complaints = new ArrayList<>();
    int from = only == null ? 0 : only;
    int to = only == null ? cases() : only + 1;
    for (int number = from; number < to && complaints.size() < SHOWN; number++) {
      int here = number;
      one.run(number, random(number))
          .ifPresent(
              complaint ->
                  complaints.add(
                      "%n%s -Dfuzz.seed=%d -Dfuzz.case=%d: %s"
                          .formatted(name, SEED, here, complaint)));
    }
    complaints.forEach(System.out::println);
    assertEquals(List.of(), complaints);
  }

  private static Random random(int number) {
    return new Random(SEED * 1_000_003 + number);
  }
}
