package dev.fillplane.supply;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.OptionalDouble;

/** The least depth that a pour must have everywhere. */
public final class Minimums {

  /** Least depth over lath on wood (common practice, no source). */
  public static final double ON_WOOD = 0.010;

  /** Least depth on insulation, of 20 to 35 mm (common practice, no source). */
  public static final double FLOATING = 0.020;

  /** Keeps the last digits after a conversion of units from being a difference. */
  private static final double ROUNDING = 1e-9;

  private Minimums() {}

  /** Least depth that a base asks for, where the sheet asks for no more. */
  public static double on(Substrate substrate) {
    return substrate == Substrate.WOOD ? ON_WOOD : 0;
  }

  /** Least depth in a room, where the sheet asks for no more. */
  private static double on(Room room) {
    double substrate = room.substrate().map(Minimums::on).orElse(0.0);
    return room.hasBase(BaseKind.INSULATION) ? Math.max(FLOATING, substrate) : substrate;
  }

  /**
   * Warns where the least depth that was told is thinner than wood or the sheet asks for, and
   * refuses one that is too thin on insulation.
   *
   * @param rooms with what is known of their bases
   * @param place of the least depth in the request
   */
  public static void check(
      OptionalDouble told, List<Room> rooms, DataSheet sheet, Place place, Findings findings) {
    if (told.isEmpty() || told.getAsDouble() >= depth(rooms, sheet) - ROUNDING) {
      return;
    }
    if (told.getAsDouble() < FLOATING - ROUNDING && floats(rooms)) {
      findings.error(
          "minimum-below-insulation",
          place,
          "told",
          height(told.getAsDouble()),
          "least",
          height(FLOATING));
      return;
    }
    boolean sheetAsks = told.getAsDouble() < sheet.minimumLift() - ROUNDING;
    findings.warning(
        sheetAsks ? "minimum-below-sheet" : "minimum-below-wood",
        place,
        "told",
        height(told.getAsDouble()),
        "least",
        height(depth(rooms, sheet)));
  }

  private static boolean floats(List<Room> rooms) {
    return rooms.stream().anyMatch(room -> room.hasBase(BaseKind.INSULATION));
  }

  private static Amount height(double told) {
    return Amount.of(told, Dimension.HEIGHT);
  }

  /**
   * The sheet's thinnest layer, or what wood or insulation need where any room has them. An unknown
   * substrate counts as concrete.
   */
  public static double depth(List<Room> rooms, DataSheet sheet) {
    double base = rooms.stream().mapToDouble(Minimums::on).max().orElse(0);
    return Math.max(base, sheet.minimumLift());
  }
}
