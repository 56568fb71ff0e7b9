package dev.fillplane.room;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Rooms in few words. */
final class RoomBuilder {

  private final String id;
  private final List<List<Position>> rings = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();

  /** With its outer ring, {@code x, y, x, y, ...}. */
  RoomBuilder(String id, double... outer) {
    this.id = id;
    ring(outer);
  }

  static RoomBuilder rectangle(String id, double x, double y, double width, double depth) {
    return new RoomBuilder(id, box(x, y, width, depth));
  }

  static double[] box(double x, double y, double width, double depth) {
    return new double[] {x, y, x + width, y, x + width, y + depth, x, y + depth, x, y};
  }

  RoomBuilder ring(double... coordinates) {
    List<Position> ring = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      ring.add(new Position(coordinates[i], coordinates[i + 1]));
    }
    rings.add(ring);
    return this;
  }

  RoomBuilder exit(String opening, double fromX, double fromY, double toX, double toY) {
    return opening(OpeningKind.EXIT, null, opening, fromX, fromY, toX, toY);
  }

  RoomBuilder doorway(
      String into, String opening, double fromX, double fromY, double toX, double toY) {
    return opening(OpeningKind.DOORWAY, into, opening, fromX, fromY, toX, toY);
  }

  private RoomBuilder opening(
      OpeningKind kind,
      String into,
      String opening,
      double fromX,
      double fromY,
      double toX,
      double toY) {
    Position from = new Position(fromX, fromY);
    Position to = new Position(toX, toY);
    openings.add(new Opening(opening, from, to, kind, Optional.ofNullable(into)));
    return this;
  }

  Room room() {
    return new Room(id, new Outline(rings), Optional.empty(), null, OptionalInt.empty(), openings);
  }

  static List<Room> rooms(RoomBuilder... rooms) {
    return List.of(rooms).stream().map(RoomBuilder::room).toList();
  }

  static List<Finding> findings(RoomBuilder... rooms) {
    Findings findings = new Findings();
    RoomCheck.check(rooms(rooms), Place.root().at("rooms"), findings);
    List<Finding> all = new ArrayList<>(findings.errors());
    all.addAll(findings.warnings());
    return all;
  }
}
