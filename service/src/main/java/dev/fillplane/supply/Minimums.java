package dev.fillplane.supply;

import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;

/** The least depth that a pour must have everywhere. */
public final class Minimums {

  /** Least depth over lath on wood (common practice, no source). */
  public static final double ON_WOOD = 0.010;

  private Minimums() {}

  /**
   * The sheet's thinnest layer, or what wood needs where any room has a floor of wood. An unknown
   * substrate counts as concrete.
   */
  public static double depth(List<Room> rooms, DataSheet sheet) {
    boolean wood =
        rooms.stream().anyMatch(room -> room.substrate().equals(Optional.of(Substrate.WOOD)));
    return wood ? Math.max(ON_WOOD, sheet.minimumLift()) : sheet.minimumLift();
  }
}
