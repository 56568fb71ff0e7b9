package dev.fillplane.plan;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalInt;

/**
 * The next pass over a floor.
 *
 * @param action what it is
 * @param area to be worked on
 * @param volume of underlayment or patching compound that it takes
 * @param bags that it takes, where the material is known
 * @param minutes of grinding for one person; patching and pouring are not counted
 * @param why this one
 */
public record NextPass(
    NextAction action,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    OptionalInt bags,
    @Measured(Dimension.TIME) double minutes,
    Remark why) {}
