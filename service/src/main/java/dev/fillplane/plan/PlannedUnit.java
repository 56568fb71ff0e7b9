package dev.fillplane.plan;

import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.material.DataSheet;

/**
 * A plan and what an order for several units must know beside it.
 *
 * @param sheet what is poured
 * @param draws the volume over equally likely floors
 * @param confidence at which the plan orders
 * @param seed of its draws
 */
public record PlannedUnit(
    Plan plan, DataSheet sheet, VolumeDraws draws, double confidence, long seed) {}
