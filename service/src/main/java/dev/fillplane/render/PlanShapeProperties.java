package dev.fillplane.render;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a shape of a plan is; only what belongs to its kind is there.
 *
 * @param kind room, opening, contour, ground, keep-open, bay, ribbon, joint, dam, rail, station or
 *     pin
 * @param what what of its kind it is
 * @param id its name
 * @param room the room it lies in
 * @param bay the bay it belongs to
 * @param number its number, from 1: of a ribbon its place in the pour, of a pin, a rail or a ground
 *     area that on the sheet, of a station that of its rail
 * @param lift the layer of a bay, from the bottom, from 1
 * @param depth of a contour; mean depth of a ribbon
 * @param height of a pin, a station, a dam or a joint over the floor; to take off a ground area; to
 *     rip a rail to
 * @param shim to pack under a rail at a station
 * @param area of a room or a ground area
 * @param volume of a bay or a ribbon; to grind off
 * @param length of a dam, a joint or an opening
 * @param start when the first batch of a ribbon is placed, from the start of the work
 * @param end when its last batch is placed
 * @param edgeAge of its oldest edge when it is met; left out where nothing meets it
 */
public record PlanShapeProperties(
    String kind,
    Optional<String> what,
    Optional<String> id,
    Optional<String> room,
    Optional<String> bay,
    OptionalInt number,
    OptionalInt lift,
    @Measured(Dimension.HEIGHT) OptionalDouble depth,
    @Measured(Dimension.HEIGHT) OptionalDouble height,
    @Measured(Dimension.HEIGHT) OptionalDouble shim,
    @Measured(Dimension.AREA) OptionalDouble area,
    @Measured(Dimension.FILL) OptionalDouble volume,
    @Measured(Dimension.PLAN) OptionalDouble length,
    @Measured(Dimension.TIME) OptionalDouble start,
    @Measured(Dimension.TIME) OptionalDouble end,
    @Measured(Dimension.TIME) OptionalDouble edgeAge) {}
