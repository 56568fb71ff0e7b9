package dev.fillplane.safety;

import dev.fillplane.depth.Fill;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Load;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.function.Predicate;

/**
 * Rooms of a job that have something in common, with what is poured in them all.
 *
 * @param rooms some or none
 * @param wetDensity of the fresh mix
 */
record PouredRooms(List<RoomPour> rooms, double wetDensity) {

  PouredRooms that(Predicate<Room> common) {
    return new PouredRooms(
        rooms.stream().filter(pour -> common.test(pour.room())).toList(), wetDensity);
  }

  /** Those where something is poured on wood. */
  PouredRooms onWood() {
    return poured().that(room -> room.isOf(Substrate.WOOD));
  }

  /** Those whose own pour weighs more than {@code limit} in its mean. */
  PouredRooms over(Amount limit) {
    return new PouredRooms(
        rooms.stream().filter(pour -> Load.isOver(load(pour), limit)).toList(), wetDensity);
  }

  private Amount load(RoomPour pour) {
    return Load.ofMassPerArea(pour.fill().meanDepth() * wetDensity);
  }

  /** Those where something is poured on a base of some kind. */
  PouredRooms on(BaseKind kind) {
    return poured().that(room -> room.hasBase(kind));
  }

  PouredRooms poured() {
    return new PouredRooms(rooms.stream().filter(RoomPour::isPoured).toList(), wetDensity);
  }

  boolean isEmpty() {
    return rooms.isEmpty();
  }

  List<String> names() {
    return rooms.stream().map(pour -> pour.room().id()).toList();
  }

  double area() {
    return rooms.stream().mapToDouble(pour -> pour.fill().area()).sum();
  }

  /** Of what is poured. */
  double meanDepth() {
    double volume = rooms.stream().mapToDouble(pour -> pour.fill().volume()).sum();
    return new Fill(area(), volume).meanDepth();
  }

  /** Largest depth; 0 where nothing is poured. */
  double maximumDepth() {
    return rooms.stream().mapToDouble(pour -> pour.depths().maximum()).reduce(0, Math::max);
  }

  /** Least depth; 0 where some floor stays bare. */
  Amount leastDepth() {
    double least = rooms.stream().mapToDouble(pour -> pour.depths().minimum()).min().orElse(0);
    return Amount.of(Math.max(0, least), Dimension.HEIGHT);
  }

  /** Weight of the fresh pour in the mean of what is poured. */
  Amount load() {
    return Load.ofMassPerArea(meanDepth() * wetDensity);
  }

  /** The same at the deepest place. */
  Amount deepestLoad() {
    return Load.ofMassPerArea(maximumDepth() * wetDensity);
  }
}
