package dev.fillplane.supply;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.OptionalDouble;

/** The least depth that a pour must have everywhere. */
public final class Minimums {

  /** Least depth over lath on wood (common practice, no source). */
  public static final double ON_WOOD = 0.010;

  /** Keeps the last digits after a conversion of units from being a difference. */
  private static final double ROUNDING = 1e-9;

  private Minimums() {}

  /** Least depth that a base asks for, where the sheet asks for no more. */
  public static double on(Substrate substrate) {
    return substrate == Substrate.WOOD ? ON_WOOD : 0;
  }

  /**
   * Warns where the least depth that was told is thinner than wood or the sheet asks for.
   *
   * @param place of the least depth in the request
   */
  public static void check(
      OptionalDouble told, List<Room> rooms, DataSheet sheet, Place place, Findings findings) {
    if (told.isEmpty() || told.getAsDouble() >= depth(rooms, sheet) - ROUNDING) {
      return;
    }
    boolean sheetAsks = told.getAsDouble() < sheet.minimumLift() - ROUNDING;
    findings.warning(
        sheetAsks ? "minimum-below-sheet" : "minimum-below-wood",
        place,
        "told",
        Amount.of(told.getAsDouble(), Dimension.HEIGHT),
        "least",
        Amount.of(depth(rooms, sheet), Dimension.HEIGHT));
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
