package dev.fillplane.bay;

import dev.fillplane.room.Opening;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;

/** Shifts a plan and then turns it about its origin. */
public record Move(double dx, double dy, double angle) {

  double cos() {
    return Math.cos(angle);
  }

  double sin() {
    return Math.sin(angle);
  }

  Position of(Position p) {
    double x = p.x() + dx;
    double y = p.y() + dy;
    return new Position(x * cos() - y * sin(), x * sin() + y * cos());
  }

  /** The room, moved. */
  public Room of(Room room) {
    return new Room(
        room.id(),
        new Outline(
            room.outline().rings().stream()
                .map(ring -> ring.stream().map(this::of).toList())
                .toList()),
        room.substrate(),
        room.absorbency(),
        room.built(),
        room.openings().stream()
            .map(o -> new Opening(o.id(), of(o.from()), of(o.to()), o.kind(), o.into()))
            .toList());
  }
}
