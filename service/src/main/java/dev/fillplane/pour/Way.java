package dev.fillplane.pour;

import java.util.ArrayList;
import java.util.List;

/**
 * Who and what of a crew is put to work; the others stand by.
 *
 * @param people who work
 * @param mixers that run
 * @param barrels in use
 * @param preFilled of them with measured water at the start
 */
record Way(int people, int mixers, int barrels, int preFilled) {

  /** More mixers than this are no help: who has more wants a pump. */
  private static final int MOST_MIXERS = 4;

  /** More people than these, besides two for each mixer, find nothing to do. */
  private static final int OTHER_HANDS = 4;

  /** Counts of barrels that are tried: all small ones, then some. */
  private static final int[] COUNTS = {1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 48, 64, 100};

  /** In a longer pour than this the start does not matter. */
  private static final int LONG_POUR = 2000;

  /**
   * The ways that a crew can choose between. All ways of a smaller crew are among those of a larger
   * one, so that the best way of the larger one is never worse. Of ways that are equal the first is
   * to be taken: fewest mixers, most people, fewest barrels.
   */
  static List<Way> of(Crew crew, int batches) {
    List<Way> ways = new ArrayList<>();
    int most = crew.pumps() ? 1 : Math.min(crew.mixers(), MOST_MIXERS);
    int preFilled = batches <= LONG_POUR ? crew.preFilled() : 0;
    for (int mixers = 1; mixers <= most; mixers++) {
      int hands = Math.min(crew.people(), 2 * mixers + OTHER_HANDS);
      for (int people = hands; people >= mixers; people--) {
        addBarrels(crew, people, mixers, preFilled, ways);
      }
    }
    return ways;
  }

  private static void addBarrels(Crew crew, int people, int mixers, int preFilled, List<Way> ways) {
    if (crew.pumps()) {
      ways.add(new Way(people, mixers, 1, 0));
      return;
    }
    for (int barrels : COUNTS) {
      boolean use = barrels >= mixers && barrels <= Math.max(3 * mixers, preFilled);
      if (use && barrels <= crew.barrels()) {
        ways.add(new Way(people, mixers, barrels, 0));
        for (int filled : COUNTS) {
          if (filled <= Math.min(preFilled, barrels)) {
            ways.add(new Way(people, mixers, barrels, filled));
          }
        }
      }
    }
  }
}
