package dev.fillplane.pour;

import dev.fillplane.bay.RibbonRule;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The people, their tools and how they work. Who does what is not told: whoever is free takes the
 * most urgent work.
 *
 * @param people all who help; 3 unless told
 * @param mixers drills with a paddle; 1
 * @param barrels mixing barrels; 2 for each mixer
 * @param preFilled barrels that stand ready with measured water at the start, at most all; 0
 * @param bagsPerBatch bags in one mix; 1
 * @param placing barrels or pump; barrels. With a pump its machine doses the water and mixes
 * @param carryDistance from the mixers to the floor; 15 m
 * @param waterTime to rinse a barrel and measure the water of one bag at the tap; 30 s
 * @param mixTime time under the mixer; that of the data sheet
 * @param betweenBays from the last batch of a bay to the first of the next; none
 * @param breaks of the whole crew; none
 * @param start when the work starts, as HH:MM, for times by the clock
 */
public record Crew(
    Integer people,
    Integer mixers,
    Integer barrels,
    Integer preFilled,
    Integer bagsPerBatch,
    Placing placing,
    @Measured(Dimension.PLAN) Double carryDistance,
    @Measured(Dimension.TIME) Double waterTime,
    @Measured(Dimension.TIME) OptionalDouble mixTime,
    @Measured(Dimension.TIME) Double betweenBays,
    List<Break> breaks,
    Optional<String> start) {

  /** Common practice, no source. */
  public static final double USUAL_CARRY = 15;

  /** 10 L a minute from the tap into a barrel of 5 L (common practice, no source). */
  public static final double USUAL_WATER_TIME = 30;

  /** Fills in what was left out. */
  public Crew {
    people = people == null ? 3 : people;
    mixers = mixers == null ? 1 : mixers;
    barrels = barrels == null ? 2 * mixers : barrels;
    preFilled = preFilled == null ? 0 : preFilled;
    bagsPerBatch = bagsPerBatch == null ? 1 : bagsPerBatch;
    placing = placing == null ? Placing.BARREL : placing;
    carryDistance = carryDistance == null ? USUAL_CARRY : carryDistance;
    waterTime = waterTime == null ? USUAL_WATER_TIME : waterTime;
    betweenBays = betweenBays == null ? 0.0 : betweenBays;
    breaks = breaks == null ? List.of() : List.copyOf(breaks);
  }

  /** Nothing told. */
  public static Crew usual() {
    return of(null, null, null, null);
  }

  /** All else as usual. */
  public static Crew of(Integer people, Integer mixers, Integer barrels, Integer bagsPerBatch) {
    return new Crew(
        people,
        mixers,
        barrels,
        null,
        bagsPerBatch,
        null,
        null,
        null,
        OptionalDouble.empty(),
        null,
        null,
        Optional.empty());
  }

  /** The same with all its barrels filled ahead. */
  Crew allFilled() {
    return new Crew(
        people,
        mixers,
        barrels,
        barrels,
        bagsPerBatch,
        placing,
        carryDistance,
        waterTime,
        mixTime,
        betweenBays,
        breaks,
        start);
  }

  /** The same work by other people with other tools. */
  Crew with(int people, int mixers, int barrels, int bagsPerBatch) {
    return new Crew(
        people,
        mixers,
        barrels,
        preFilled,
        bagsPerBatch,
        placing,
        carryDistance,
        waterTime,
        mixTime,
        betweenBays,
        breaks,
        start);
  }

  /**
   * How wide the ribbons are: beads from a bucket, or lanes of 3 to 4.5 m by hose (common practice,
   * no source).
   *
   * @param batch volume of a batch
   */
  public RibbonRule ribbons(double batch) {
    return pumps() ? RibbonRule.byHose(batch) : RibbonRule.byHand(batch);
  }

  boolean pumps() {
    return placing == Placing.PUMP;
  }
}
