package dev.fillplane.plan;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.surface.SpotReason;

/**
 * A place to read.
 *
 * @param order from 1, as they are walked
 * @param room id of its room
 * @param why it is read
 */
public record SurveyStop(
    int order,
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    String room,
    SpotReason why) {}
