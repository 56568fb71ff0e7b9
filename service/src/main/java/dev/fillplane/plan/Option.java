package dev.fillplane.plan;

import dev.fillplane.flatness.Passes;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.Money;
import java.util.Optional;

/**
 * One way to deal with the floor.
 *
 * @param name which
 * @param passes whether the floor is then flat enough for the covering
 * @param bags likely bags, rounded up
 * @param grindArea floor to grind
 * @param minutes working time summed over the people, with preparing, priming and washing up,
 *     without waiting
 * @param cost of fill and grinding at the caller's prices, if told
 */
public record Option(
    OptionName name,
    Passes passes,
    int bags,
    @Measured(Dimension.AREA) double grindArea,
    @Measured(Dimension.TIME) double minutes,
    Optional<Money> cost) {}
