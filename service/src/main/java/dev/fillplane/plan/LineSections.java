package dev.fillplane.plan;

import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.room.Floorplan;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/** The sections that measured lines lie in: each room that is told is one by itself. */
final class LineSections {

  private final List<Room> rooms;
  private final OptionalDouble area;
  private final List<OptionalInt> roomOfLine;

  /** Of a request whose rooms are checked. */
  LineSections(FlatnessCheckRequest request) {
    this.rooms = request.rooms();
    this.area = request.area();
    Floorplan floorplan = new Floorplan(rooms);
    this.roomOfLine = request.lines().stream().map(line -> room(line, floorplan)).toList();
  }

  /** Where the middle of a line lies; the only room where that is not told. */
  private OptionalInt room(MeasuredLine line, Floorplan floorplan) {
    if (!line.isPlaced()) {
      return rooms.size() == 1 ? OptionalInt.of(0) : OptionalInt.empty();
    }
    Position from = line.from().orElseThrow();
    Position to = line.to().orElseThrow();
    return floorplan.roomAt((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  /** The room of a line, if it lies in one. */
  OptionalInt room(int line) {
    return roomOfLine.get(line);
  }

  /** The area of the section of a line, m2, where it is known; one that is told is one section. */
  OptionalDouble area(int line) {
    OptionalInt room = room(line);
    return area.isEmpty() && room.isPresent()
        ? OptionalDouble.of(polygon(room.getAsInt()).getArea())
        : area;
  }

  /** The lines in a room. */
  int[] linesIn(int room) {
    return IntStream.range(0, roomOfLine.size())
        .filter(line -> roomOfLine.get(line).equals(OptionalInt.of(room)))
        .toArray();
  }

  Polygon polygon(int room) {
    return rooms.get(room).outline().polygon();
  }
}
