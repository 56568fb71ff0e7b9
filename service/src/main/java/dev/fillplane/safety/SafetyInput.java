package dev.fillplane.safety;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.heat.AirReport;
import dev.fillplane.heat.Drying;
import dev.fillplane.heat.Site;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Amount;
import dev.fillplane.room.Feature;
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
 * @param premises what of the place can hurt
 * @param features what there is in the floor
 * @param drying what base and air say to the pour
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
    int rails,
    Premises premises,
    List<Feature> features,
    Drying drying) {

  /** Copies the lists. */
  public SafetyInput {
    rooms = List.copyOf(rooms);
    features = List.copyOf(features);
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
      int rails,
      Premises premises,
      List<Feature> features,
      Drying drying) {
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
        rails,
        premises,
        features,
        drying);
  }

  boolean mixes() {
    return bags > 0;
  }

  boolean grinds() {
    return grindArea > 0;
  }

  /** The air over the floor, where its humidity is told. */
  Optional<AirReport> air() {
    return drying.air();
  }

  /** Whether anything is done at all. */
  boolean isWork() {
    return mixes() || grinds();
  }

  /** All powder. */
  double powder() {
    return bags * sheet.bagMass();
  }

  /** Weight of the fresh pour in the mean of what is poured. */
  Amount load() {
    return Load.ofMassPerArea(meanDepth * sheet.wetDensity());
  }

  /** The same at the deepest place. */
  Amount deepestLoad() {
    return Load.ofMassPerArea(maximumDepth * sheet.wetDensity());
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
