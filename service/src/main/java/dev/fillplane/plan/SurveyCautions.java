package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import dev.fillplane.surface.Spots;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What a survey cannot show: the floor between readings far apart, and beyond them. */
final class SurveyCautions {

  /** Floor for one reading at most, in m2; 2 to 4 are usual (common practice, no source). */
  static final double AREA_OF_A_READING = 4;

  /** How far outside the hull of the readings the floor is still taken as told; own choice. */
  private static final double BEYOND = 1;

  /** Floor further out that is worth a word; own choice. */
  private static final double AREA_BEYOND = 1;

  private SurveyCautions() {}

  /** Warns where much floor lies far outside the readings: there it is extrapolated. */
  static void warnOfFloorBeyond(List<Room> rooms, Spots spots, Findings findings) {
    Coordinate[] places = new Coordinate[spots.count()];
    for (int i = 0; i < places.length; i++) {
      places[i] = new Coordinate(spots.x()[i], spots.y()[i]);
    }
    Geometry told = new ConvexHull(places, new GeometryFactory()).getConvexHull().buffer(BEYOND);
    double area = 0;
    for (Room room : rooms) {
      Polygon outline = room.outline().polygon();
      area +=
          outline.getArea()
              - OverlayNGRobust.overlay(outline, told, OverlayNG.INTERSECTION).getArea();
    }
    if (area > AREA_BEYOND) {
      findings.warning(
          "floor-beyond-readings",
          Place.root().at("survey"),
          "area",
          Amount.of(area, Dimension.AREA),
          "distance",
          Amount.of(BEYOND, Dimension.PLAN));
    }
  }

  /** Warns of rooms with few readings for their size. */
  static void warnOfFew(List<Room> rooms, int[] readings, Findings findings) {
    for (int i = 0; i < readings.length; i++) {
      double area = rooms.get(i).outline().polygon().getArea();
      if (readings[i] > 0 && isThin(area, readings[i])) {
        findings.warning(
            "few-readings",
            Place.root().at("rooms").at(i),
            "room",
            rooms.get(i).id(),
            "count",
            readings[i],
            "area",
            Amount.of(area, Dimension.AREA),
            "usual",
            (int) Math.ceil(area / AREA_OF_A_READING));
      }
    }
  }

  /** Whether any room has too few readings to tell how flat it is. */
  static boolean isThin(List<Room> rooms, int[] readings) {
    for (int i = 0; i < readings.length; i++) {
      if (isThin(rooms.get(i).outline().polygon().getArea(), readings[i])) {
        return true;
      }
    }
    return false;
  }

  private static boolean isThin(double area, int readings) {
    return readings * AREA_OF_A_READING < area;
  }
}
