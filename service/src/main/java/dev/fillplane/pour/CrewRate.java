package dev.fillplane.pour;

import java.util.ArrayList;
import java.util.List;

/**
 * The steady beat of a crew: a batch every {@code interval}, placed {@code untilPlaced} after its
 * first water. In closed form: each running mixer keeps one person busy, the others carry, pour and
 * spread; the slowest of mixing, hands and barrels sets the beat. One person alone does everything
 * in turn.
 *
 * @param people who work
 * @param mixers that run
 * @param interval between the first water of two batches
 * @param untilPlaced from first water to the floor
 * @param slowest what sets the beat
 */
record CrewRate(int people, int mixers, double interval, double untilPlaced, Stage slowest)
    implements BatchTimes {

  /**
   * The beats that a crew can choose between, one for each number of mixers that run. Smaller crews
   * are among them as far as they can be of use: whoever is over may idle.
   */
  static List<CrewRate> choices(Crew crew, BatchWork work) {
    List<CrewRate> choices = new ArrayList<>();
    choices.add(alone(work));
    int most = Math.min(crew.people() - 1, Math.min(crew.mixers(), crew.barrels()));
    for (int mixers = 1; mixers <= most; mixers++) {
      choices.add(together(crew, mixers, work));
    }
    return choices;
  }

  private static CrewRate alone(BatchWork work) {
    double interval = work.mixing() + work.placing();
    return new CrewRate(1, 1, interval, work.untilPlaced(1), Stage.PEOPLE);
  }

  private static CrewRate together(Crew crew, int mixers, BatchWork work) {
    int hands = crew.people() - mixers;
    double mixing = work.mixing() / mixers;
    double placing = work.placing() / hands;
    double barrels = work.barrel(hands) / crew.barrels();
    double interval = Math.max(mixing, Math.max(placing, barrels));
    Stage slowest =
        interval == mixing ? Stage.MIXING : interval == placing ? Stage.PEOPLE : Stage.BARRELS;
    return new CrewRate(crew.people(), mixers, interval, work.untilPlaced(hands), slowest);
  }

  @Override
  public double firstWater(int batch) {
    return batch * interval;
  }

  @Override
  public double placed(int batch) {
    return firstWater(batch) + untilPlaced;
  }
}
