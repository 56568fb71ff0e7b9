package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * The plane of the finished pour in some rooms.
 *
 * @param rooms their ids
 * @param elevation at the plan origin
 * @param boundBy what holds it there; empty for a given target
 */
public record RoomsPlane(
    List<String> rooms,
    @Measured(Dimension.HEIGHT) double elevation,
    @Measured(Dimension.SLOPE) double slopeX,
    @Measured(Dimension.SLOPE) double slopeY,
    List<Bound> boundBy) {

  /** Copies the lists. */
  public RoomsPlane {
    rooms = List.copyOf(rooms);
    boundBy = List.copyOf(boundBy);
  }
}
