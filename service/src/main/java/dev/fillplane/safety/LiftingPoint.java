package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * One end of a lift, judged.
 *
 * @param recommendedMass that nearly all healthy workers can lift so; 0 where nothing should be
 * @param index mass lifted over recommended mass; left out where that is 0
 * @param multipliers what lessens it
 */
public record LiftingPoint(
    @Measured(Dimension.MASS) double recommendedMass,
    OptionalDouble index,
    LiftingMultipliers multipliers) {}
