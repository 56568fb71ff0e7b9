package dev.fillplane.pour;

/**
 * The people and their tools.
 *
 * @param people all who help; 3 unless told
 * @param mixers drills with a paddle; 1
 * @param barrels mixing barrels; 2 for each mixer
 * @param bagsPerBatch bags in one mix; 1
 */
public record Crew(Integer people, Integer mixers, Integer barrels, Integer bagsPerBatch) {

  /** Fills in what was left out. */
  public Crew {
    people = people == null ? 3 : people;
    mixers = mixers == null ? 1 : mixers;
    barrels = barrels == null ? 2 * mixers : barrels;
    bagsPerBatch = bagsPerBatch == null ? 1 : bagsPerBatch;
  }

  /** Nothing told. */
  public static Crew usual() {
    return new Crew(null, null, null, null);
  }
}
