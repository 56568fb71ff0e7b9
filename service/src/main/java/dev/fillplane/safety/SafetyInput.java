package dev.fillplane.safety;

import dev.fillplane.heat.AirReport;
import dev.fillplane.heat.Drying;
import dev.fillplane.heat.Site;
import dev.fillplane.material.Binder;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Crew;
import dev.fillplane.pour.Placing;
import dev.fillplane.quantity.Amount;
import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import dev.fillplane.supply.Dam;
import dev.fillplane.supply.JoistBow;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the notes look at.
 *
 * @param rooms that are levelled, with what is poured in each
 * @param grindArea floor to grind
 * @param grindAreaPerHour what one person grinds in an hour
 * @param sheet of the underlayment
 * @param conditions on site
 * @param bags to order
 * @param pourTime from first water to the end
 * @param crew who does it
 * @param bow what the bow of wood joists takes, where their span is told
 * @param dams across openings
 * @param rails screed rails set up
 * @param tiled whether tile comes on top
 * @param premises what of the place can hurt
 * @param features what there is in the floor
 * @param drying what base and air say to the pour
 */
public record SafetyInput(
    List<RoomPour> rooms,
    double grindArea,
    double grindAreaPerHour,
    DataSheet sheet,
    Site conditions,
    int bags,
    double pourTime,
    Crew crew,
    Optional<JoistBow> bow,
    List<Dam> dams,
    int rails,
    boolean tiled,
    Premises premises,
    List<Feature> features,
    Drying drying) {

  /** Copies the lists. */
  public SafetyInput {
    rooms = List.copyOf(rooms);
    dams = List.copyOf(dams);
    features = List.copyOf(features);
  }

  boolean mixes() {
    return bags > 0;
  }

  /** Whether wet cement is about. */
  boolean mixesCement() {
    return mixes() && sheet.binder() == Binder.CEMENT;
  }

  /** Whether mix is carried and poured by hand. */
  boolean mixesInBarrels() {
    return mixes() && crew.placing() == Placing.BARREL;
  }

  boolean grinds() {
    return grindArea > 0;
  }

  /** Mixes, the last of which may be smaller. */
  int batches() {
    return (bags + crew.bagsPerBatch() - 1) / crew.bagsPerBatch();
  }

  /** Time under each mixer, all batches together. */
  double mixingTime() {
    double each = crew.mixTime().orElse(sheet.mixTime());
    return each * batches() / Math.max(1, crew.mixers());
  }

  /** Hours that grinding takes one person. */
  double grindHours() {
    return grindAreaPerHour > 0 ? grindArea / grindAreaPerHour : 0;
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

  /** All rooms. */
  PouredRooms all() {
    return new PouredRooms(rooms, sheet.wetDensity());
  }

  /** Weight of the fresh pour in the mean of what is poured. */
  Amount load() {
    return all().load();
  }

  double pouredArea() {
    return all().area();
  }

  boolean hasRoom(Predicate<Room> kind) {
    return rooms.stream().anyMatch(pour -> kind.test(pour.room()));
  }

  boolean hasWood() {
    return hasRoom(room -> room.isOf(Substrate.WOOD));
  }

  /** Whether the floor spans a void, or may do so as nobody told. */
  boolean maySpan() {
    return premises.suspended().orElse(hasWood() || hasRoom(room -> room.substrate().isEmpty()));
  }

  int count(FeatureKind kind) {
    return (int) features.stream().filter(feature -> feature.kind() == kind).count();
  }

  /** Whether the caller says that dust and fumes are not carried off. */
  boolean isUnventilated() {
    return conditions.ventilated().equals(Optional.of(false));
  }
}
