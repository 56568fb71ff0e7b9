package dev.fillplane.render;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Walls thick, islands hatched, and the names of the rooms. */
final class RoomLayer {

  static final String ISLAND = "depth-island";

  /** Thickness of a wall, px. */
  static final double WALL = 5;

  private static final int STEPS = 8;

  private RoomLayer() {}

  static Markup draw(Sheet sheet) {
    Markup svg = new Markup();
    PathData islands = new PathData();
    PathData walls = new PathData();
    for (Room room : sheet.request().rooms()) {
      List<List<Position>> rings = room.outline().rings();
      walls.ring(sheet.view(), rings.get(0));
      rings.subList(1, rings.size()).forEach(ring -> islands.ring(sheet.view(), ring));
      rings.forEach(ring -> block(sheet, ring));
    }
    if (!islands.isEmpty()) {
      svg.leaf("path", "fill", "#fff", "d", islands);
      svg.leaf(
          "path",
          "fill",
          "url(#" + ISLAND + ")",
          "stroke",
          "#111",
          "stroke-width",
          2.5,
          "d",
          islands);
    }
    return svg.leaf(
        "path",
        "fill",
        "none",
        "stroke",
        "#111",
        "stroke-width",
        WALL,
        "stroke-linejoin",
        "miter",
        "d",
        walls);
  }

  /** Keeps texts off a wall. */
  static void block(Sheet sheet, List<Position> ring) {
    Coordinate[] points = PathData.points(sheet.view(), ring);
    for (int i = 1; i < points.length; i++) {
      sheet.labels().wall(points[i - 1], points[i]);
    }
  }

  /** Names as far up and left as there is room. */
  static void name(Sheet sheet) {
    for (int i = 0; i < sheet.rooms().size(); i++) {
      name(sheet, sheet.request().rooms().get(i).id(), sheet.rooms().get(i));
    }
  }

  private static void name(Sheet sheet, String id, Polygon room) {
    Envelope box = room.getEnvelopeInternal();
    double width = box.getWidth() * sheet.view().scale();
    Label label = new Label(Lettering.fit(id, 13, 0.8 * width), 0, 0, Look.ROOM);
    double left = sheet.view().x(box.getMinX()) + label.width() / 2 + 2 * WALL;
    double right = sheet.view().x(box.getMaxX()) - label.width() / 2 - 2 * WALL;
    double top = sheet.view().y(box.getMaxY()) + label.height() / 2 + 2 * WALL;
    double bottom = sheet.view().y(box.getMinY()) - label.height() / 2 - 2 * WALL;
    IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(room);
    for (int i = 0; i < STEPS * STEPS; i++) {
      double x = left + (right - left) * (i % STEPS) / STEPS;
      double y = top + (bottom - top) * Math.floorDiv(i, STEPS) / STEPS;
      Label moved = label.movedTo(x, y);
      if (holds(sheet.view(), inside, moved.box()) && sheet.labels().place(moved)) {
        return;
      }
    }
  }

  private static boolean holds(View view, IndexedPointInAreaLocator room, Envelope box) {
    return holds(view, room, box.getMinX(), box.getMinY())
        && holds(view, room, box.getMinX(), box.getMaxY())
        && holds(view, room, box.getMaxX(), box.getMinY())
        && holds(view, room, box.getMaxX(), box.getMaxY());
  }

  private static boolean holds(View view, IndexedPointInAreaLocator room, double x, double y) {
    return room.locate(view.onPlan(x, y)) == Location.INTERIOR;
  }
}
