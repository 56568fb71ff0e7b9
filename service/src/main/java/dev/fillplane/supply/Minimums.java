package dev.fillplane.supply;

import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;

/** The least depth that a pour must have everywhere. */
public final class Minimums {

  /** Least depth over lath on wood (common practice, no source). */
  public static final double ON_WOOD = 0.010;

  private Minimums() {}

  /** Least depth that a base asks for, where the sheet asks for no more. */
  public static double on(Substrate substrate) {
    return substrate == Substrate.WOOD ? ON_WOOD : 0;
  }

  /**
   * The sheet's thinnest layer, or what wood needs where any room has a floor of wood. An unknown
   * substrate counts as concrete.
   */
  public static double depth(List<Room> rooms, DataSheet sheet) {
    double base =
        rooms.stream()
            .flatMap(room -> room.substrate().stream())
            .mapToDouble(Minimums::on)
            .max()
            .orElse(0);
    return Math.max(base, sheet.minimumLift());
  }
}
