package dev.fillplane.render;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.target.Plane;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/** What varies from map to map; heights in m. */
record Wish(
    UnitSystem units,
    String reference,
    List<Room> rooms,
    Plane target,
    double cell,
    double spacing,
    DoubleBinaryOperator floor) {

  Wish in(UnitSystem other) {
    return new Wish(other, reference, rooms, target, cell, spacing, floor);
  }

  Wish called(String name) {
    return new Wish(units, name, rooms, target, cell, spacing, floor);
  }

  Wish under(Plane other) {
    return new Wish(units, reference, rooms, other, cell, spacing, floor);
  }

  Wish withCell(double other) {
    return new Wish(units, reference, rooms, target, other, spacing, floor);
  }

  /** A gently waved floor between -8 and 2 mm with a level target at 5 mm. */
  static Wish over(List<Room> rooms) {
    return new Wish(
        UnitSystem.METRIC,
        "sample floor (invented)",
        rooms,
        Plane.level(0.005),
        0.1,
        1.2,
        (x, y) -> 0.001 * (-3 + 3 * Math.sin(0.9 * x + 0.4) + 2.5 * Math.cos(0.8 * y - 0.3 * x)));
  }
}
