package dev.fillplane.estimate;

import dev.fillplane.plan.UsualRates;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * What one person does in an hour, and times of a visit; summed over people where not said. Those
 * of grinding are in the plan. Usual values are common practice, no source, of low confidence.
 *
 * @param blast floor blasted or scoured clean; 30 m2
 * @param prime floor given one coat of primer; 80 m2
 * @param barrier floor given a moisture barrier; 20 m2
 * @param mask edge of walls masked; 60 m
 * @param seal edge sealed with its strip; 25 m
 * @param cracks crack cut open and filled; 10 m
 * @param setUp to unload and set up, a visit of the crew; 1 h
 * @param washUp to wash barrels and tools and tidy, a pour; 1 h
 * @param returnVisit to come back once, for a layer, after a barrier, to strip dams; 1 h
 * @param halfDay up to multiples of which the time on site of each person is paid; 4 h
 */
public record WorkRates(
    @Measured(Dimension.AREA) Double blast,
    @Measured(Dimension.AREA) Double prime,
    @Measured(Dimension.AREA) Double barrier,
    @Measured(Dimension.PLAN) Double mask,
    @Measured(Dimension.PLAN) Double seal,
    @Measured(Dimension.PLAN) Double cracks,
    @Measured(Dimension.TIME) Double setUp,
    @Measured(Dimension.TIME) Double washUp,
    @Measured(Dimension.TIME) Double returnVisit,
    @Measured(Dimension.TIME) Double halfDay) {

  static final double USUAL_BARRIER = 20;
  static final double USUAL_MASK = 60;
  static final double USUAL_CRACKS = 10;
  static final double USUAL_VISIT = UsualRates.HOUR;
  static final double USUAL_HALF_DAY = 4 * UsualRates.HOUR;

  /** Fills in what was left out. */
  public WorkRates {
    blast = told(blast, UsualRates.BLAST);
    prime = told(prime, UsualRates.PRIME);
    barrier = told(barrier, USUAL_BARRIER);
    mask = told(mask, USUAL_MASK);
    seal = told(seal, UsualRates.SEAL);
    cracks = told(cracks, USUAL_CRACKS);
    setUp = told(setUp, USUAL_VISIT);
    washUp = told(washUp, UsualRates.WASH_UP);
    returnVisit = told(returnVisit, USUAL_VISIT);
    halfDay = told(halfDay, USUAL_HALF_DAY);
  }

  /** Nothing told. */
  public static WorkRates usual() {
    return new WorkRates(null, null, null, null, null, null, null, null, null, null);
  }

  private static double told(Double told, double usual) {
    return told == null ? usual : told;
  }
}
