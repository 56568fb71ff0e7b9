package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * When the floor may be used; by the sheet's times, longer when it is colder than the sheet.
 *
 * @param walkOn people may walk on it
 * @param nextLift the next layer may follow, primed
 * @param covering it may be covered
 * @param moistureTests moisture tests of the slab before priming (ASTM F2170), by area; 0 on wood
 */
public record Drying(
    @Measured(Dimension.TIME) double walkOn,
    @Measured(Dimension.TIME) double nextLift,
    @Measured(Dimension.TIME) double covering,
    int moistureTests) {}
