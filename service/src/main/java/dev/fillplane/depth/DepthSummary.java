package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * How deep the pour is where.
 *
 * @param area area of the rooms
 * @param pouredArea part of it below the target
 * @param mean mean depth of the poured area
 * @param maximum largest depth
 * @param minimum smallest depth (target minus floor; negative where the floor stands above it)
 * @param volume volume below the target and above the floor, of the mean surface
 * @param volumeOdds the same with its uncertainty
 * @param rooms the same for each room, in the order of the request
 * @param grindVolume volume of floor above the target
 * @param grindArea its area
 */
public record DepthSummary(
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.AREA) double pouredArea,
    @Measured(Dimension.HEIGHT) double mean,
    @Measured(Dimension.HEIGHT) double maximum,
    @Measured(Dimension.HEIGHT) double minimum,
    @Measured(Dimension.FILL) double volume,
    VolumeOdds volumeOdds,
    List<RoomDepth> rooms,
    @Measured(Dimension.FILL) double grindVolume,
    @Measured(Dimension.AREA) double grindArea,
    Deepest deepest,
    Highest highest,
    List<Probe> probes,
    Grid grid,
    Contours contours) {

  /** Copies the lists. */
  public DepthSummary {
    rooms = List.copyOf(rooms);
    probes = List.copyOf(probes);
  }
}
