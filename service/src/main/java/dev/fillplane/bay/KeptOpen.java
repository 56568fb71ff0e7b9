package dev.fillplane.bay;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Outline;
import java.util.Optional;

/**
 * Something that the pour must not close.
 *
 * @param feature its number in the request, from 0
 * @param kind what it is
 * @param room the room it lies in
 * @param x of its middle
 * @param y of its middle
 * @param outline what is left unpoured, if it is no line
 * @param what what to do about it
 */
public record KeptOpen(
    int feature,
    FeatureKind kind,
    String room,
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    Optional<Outline> outline,
    Remark what) {}
