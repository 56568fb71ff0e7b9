package dev.fillplane.safety;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.heat.Site;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Crew;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;

/**
 * What the notes look at.
 *
 * @param rooms that are levelled
 * @param pouredArea of all rooms
 * @param meanDepth of the poured area
 * @param maximumDepth anywhere
 * @param grindArea floor to grind
 * @param sheet of the underlayment
 * @param conditions on site
 * @param bags to order
 * @param pourTime from first water to the end
 * @param crew who does it
 * @param rails screed rails set up
 */
public record SafetyInput(
    List<Room> rooms,
    double pouredArea,
    double meanDepth,
    double maximumDepth,
    double grindArea,
    DataSheet sheet,
    Site conditions,
    int bags,
    double pourTime,
    Crew crew,
    int rails) {

  /** Copies the list. */
  public SafetyInput {
    rooms = List.copyOf(rooms);
  }

  /** From the depths of a plan. */
  public static SafetyInput of(
      List<Room> rooms,
      DepthSummary depth,
      DataSheet sheet,
      Site conditions,
      int bags,
      double pourTime,
      Crew crew,
      int rails) {
    return new SafetyInput(
        rooms,
        depth.pouredArea(),
        depth.mean(),
        depth.maximum(),
        depth.grindArea(),
        sheet,
        conditions,
        bags,
        pourTime,
        crew,
        rails);
  }

  boolean mixes() {
    return bags > 0;
  }

  boolean grinds() {
    return grindArea > 0;
  }

  /** All powder. */
  double powder() {
    return bags * sheet.bagMass();
  }

  boolean hasWood() {
    return rooms.stream().anyMatch(room -> room.substrate().equals(Optional.of(Substrate.WOOD)));
  }

  boolean hasUnknownBase() {
    return rooms.stream().anyMatch(room -> room.substrate().isEmpty());
  }

  /** Whether the caller says that dust and fumes are not carried off. */
  boolean isUnventilated() {
    return conditions.ventilated().equals(Optional.of(false));
  }
}
