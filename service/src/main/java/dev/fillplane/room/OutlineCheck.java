package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Whether one outline encloses a floor: first each ring alone, then the rings together. */
final class OutlineCheck {

  /** Coordinates reach no further than this from the plan's origin. */
  static final double FURTHEST = 1e7;

  /** Smallest floor that is taken, m2. */
  static final double SMALLEST_FLOOR = 0.01;

  /** Smallest island that is taken, m2. */
  static final double SMALLEST_ISLAND = 1e-6;

  /** Positions of all rings of a room at most; a drawing with more is no outline of a room. */
  static final int MOST_POSITIONS = 2_000;

  private final Room room;
  private final Place place;
  private final Findings findings;

  OutlineCheck(Room room, Place outline, Findings findings) {
    this.room = room;
    place = outline.at("coordinates");
    this.findings = findings;
  }

  /** The outline as a polygon, if it is fit to work with; else errors. */
  Optional<Polygon> valid() {
    List<List<Position>> rings = room.outline().rings();
    int positions = rings.stream().mapToInt(List::size).sum();
    if (positions > MOST_POSITIONS) {
      findings.error(
          "outline-too-detailed",
          place,
          "room",
          room.id(),
          "positions",
          positions,
          "most",
          MOST_POSITIONS);
      return Optional.empty();
    }
    boolean good = !rings.isEmpty();
    if (!good) {
      findings.error("ring-too-short", place, "room", room.id());
    }
    for (int i = 0; i < rings.size(); i++) {
      good &= closed(rings.get(i), place.at(i)) && fits(rings.get(i), i);
    }
    if (!good) {
      return Optional.empty();
    }
    Polygon polygon = room.outline().polygon();
    Optional<TopologyValidationError> wrong = wrong(polygon);
    if (wrong.isEmpty()) {
      return Optional.of(polygon);
    }
    if (!new IslandCheck(room, polygon, place, findings).found()) {
      error("floor-falls-apart", place, wrong.get().getCoordinate());
    }
    return Optional.empty();
  }

  private boolean closed(List<Position> ring, Place there) {
    for (int p = 0; p < ring.size(); p++) {
      Stopped.ifInterrupted();
      if (!near(ring.get(p))) {
        findings.error(
            "outline-too-far",
            there.at(p),
            "room",
            room.id(),
            "furthest",
            Amount.of(FURTHEST, Dimension.PLAN));
        return false;
      }
    }
    if (ring.size() < 4) {
      findings.error("ring-too-short", there, "room", room.id());
      return false;
    }
    if (!ring.get(0).equals(ring.get(ring.size() - 1))) {
      findings.error("ring-not-closed", there, "room", room.id());
      return false;
    }
    return true;
  }

  /** False for numbers that are none, too. */
  private static boolean near(Position position) {
    return Math.abs(position.x()) <= FURTHEST && Math.abs(position.y()) <= FURTHEST;
  }

  /** One ring alone: it has an area and does not cross itself. */
  private boolean fits(List<Position> ring, int number) {
    Polygon polygon = new Outline(List.of(ring)).polygon();
    double smallest = number == 0 ? SMALLEST_FLOOR : SMALLEST_ISLAND;
    Optional<TopologyValidationError> wrong = wrong(polygon);
    boolean flat = polygon.convexHull().getArea() < smallest;
    if (flat || (wrong.isEmpty() && polygon.getArea() < smallest)) {
      findings.error(
          number == 0 ? "outline-too-small" : "island-too-small",
          place.at(number),
          "room",
          room.id(),
          "smallest",
          Amount.of(smallest, Dimension.AREA));
      return false;
    }
    wrong.ifPresent(one -> error("outline-crosses-itself", place.at(number), one.getCoordinate()));
    return wrong.isEmpty();
  }

  private static Optional<TopologyValidationError> wrong(Polygon polygon) {
    return Optional.ofNullable(new IsValidOp(polygon).getValidationError());
  }

  private void error(String code, Place there, Coordinate at) {
    findings.error(
        code,
        there,
        "room",
        room.id(),
        "x",
        Amount.of(at.x, Dimension.PLAN),
        "y",
        Amount.of(at.y, Dimension.PLAN));
  }
}
