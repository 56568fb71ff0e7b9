package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * Another way to do the same lift, judged at its worse end.
 *
 * @param way what is done otherwise
 * @param mass that each person then lifts
 * @param liftsPerMinute of each person
 * @param recommendedMass of each person; 0 where nothing should be lifted so
 * @param index mass over recommended mass; left out where that is 0
 */
public record LiftingAlternative(
    LiftingWay way,
    @Measured(Dimension.MASS) double mass,
    double liftsPerMinute,
    @Measured(Dimension.MASS) double recommendedMass,
    OptionalDouble index) {}
