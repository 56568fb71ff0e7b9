package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * One layer of the pour, from the bottom. The volumes of all layers add up to that of the pour.
 *
 * @param area that it covers; a lower layer fills the deep part only
 * @param volume of the layer, without any allowance
 * @param maximumDepth its thickness where it is thickest
 * @param bags likely for it on the mean surface, rounded up, as those of a room; layers together
 *     may come to more than the whole
 * @param primer for it: the floor that no lower layer has covered, and the layer below
 * @param waitBefore time from the layer below until this one is poured, primer between them dried;
 *     empty for the first
 * @param thinArea where it is thinner than the sheet's least layer
 */
public record Lift(
    int number,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double maximumDepth,
    int bags,
    Primer primer,
    @Measured(Dimension.TIME) OptionalDouble waitBefore,
    @Measured(Dimension.AREA) double thinArea) {}
