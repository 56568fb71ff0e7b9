package dev.fillplane.plan;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.RibbonRule;
import dev.fillplane.depth.EvenDepths;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A rectangle of even depth that is poured from one end to the other.
 *
 * @param length along the pour
 * @param width across it
 */
record EvenFloor(double length, double width, double depth) {

  private static final String NAME = "1";

  double area() {
    return length * width;
  }

  /** Its only bay, with ribbons across the pour. */
  BayPlan bays(RibbonRule rule) {
    Position start = new Position(0, width / 2);
    Position end = new Position(length, width / 2);
    return BayPlan.toward(room(), start, end, new EvenDepths(area(), depth), rule);
  }

  private Room room() {
    List<Position> ring =
        List.of(
            new Position(0, 0),
            new Position(length, 0),
            new Position(length, width),
            new Position(0, width),
            new Position(0, 0));
    Outline outline = new Outline(List.of(ring));
    return new Room(NAME, outline, Optional.empty(), null, OptionalInt.empty(), List.of());
  }
}
