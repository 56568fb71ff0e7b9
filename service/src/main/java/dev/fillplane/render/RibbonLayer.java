package dev.fillplane.render;

import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.math.Vector2D;

/** Ribbons of the first lift: dashed edges, order numbers, the direction of travel of each bay. */
final class RibbonLayer {

  private static final double ROOM_FOR_NUMBER = 26;
  private static final double ARROW = 70;
  private static final double[] SHIFTS = {0, 22, -22, 40, -40, 60, -60};
  private static final double SHORTEST = 24;
  private static final double OFF_NUMBERS = 20;

  /** Cosine from which on the first ribbon tells the direction. */
  private static final double CLEAR = 0.3;

  private final Sheet sheet;
  private final List<List<Ribbon>> bays = new ArrayList<>();
  private final List<List<Coordinate>> middles = new ArrayList<>();
  private int every = 1;

  RibbonLayer(Sheet sheet) {
    this.sheet = sheet;
    for (PouredBay bay : sheet.plan().pour().bays()) {
      if (bay.lift() == 1 && !bay.ribbons().isEmpty()) {
        bays.add(bay.ribbons());
        middles.add(bay.ribbons().stream().map(this::middle).toList());
      }
    }
    middles.forEach(middle -> every = Math.max(every, every(middle)));
  }

  private Coordinate middle(Ribbon ribbon) {
    Polygon strip = ribbon.outline().polygon();
    Coordinate centre = strip.getCentroid().getCoordinate();
    boolean inside = SimplePointInAreaLocator.locate(centre, strip) == Location.INTERIOR;
    Coordinate at = inside ? centre : strip.getInteriorPoint().getCoordinate();
    return sheet.view().at(at.x, at.y);
  }

  /** So many ribbons apart there is room for numbers. */
  private static int every(List<Coordinate> middles) {
    double length = middles.get(0).distance(middles.get(middles.size() - 1));
    double pitch = length / Math.max(1, middles.size() - 1);
    boolean roomy = middles.size() < 2 || pitch >= ROOM_FOR_NUMBER;
    return roomy ? 1 : (int) Math.min(middles.size(), Math.ceil(ROOM_FOR_NUMBER / (pitch + 1e-9)));
  }

  boolean isEmpty() {
    return bays.isEmpty();
  }

  /** Every how many-th ribbon is numbered, besides the first and the last of a bay. */
  int every() {
    return every;
  }

  Svg draw() {
    Set<List<Long>> done = new LinkedHashSet<>();
    PathData path = new PathData();
    for (List<Ribbon> bay : bays) {
      for (Ribbon ribbon : bay) {
        ribbon.outline().rings().forEach(ring -> edges(ring, done, path));
      }
    }
    Svg svg = new Svg();
    if (!path.isEmpty()) {
      svg.leaf("path", "fill", "none", "stroke", "#fff", "stroke-opacity", 0.5, "stroke-width", 1.8,
          "d", path);
      svg.leaf("path", "fill", "none", "stroke", "#111", "stroke-width", 0.8,
          "stroke-dasharray", "5 4", "d", path);
    }
    return svg;
  }

  /** Each edge once, or the dashes of two neighbours would fill each other's gaps. */
  private void edges(List<Position> ring, Set<List<Long>> done, PathData path) {
    Coordinate[] points = PathData.points(sheet.view(), ring);
    for (int i = 1; i < points.length; i++) {
      Coordinate from = points[i - 1].compareTo(points[i]) < 0 ? points[i - 1] : points[i];
      Coordinate to = from == points[i] ? points[i - 1] : points[i];
      List<Long> key =
          List.of(Math.round(from.x), Math.round(from.y), Math.round(to.x), Math.round(to.y));
      if (done.add(key)) {
        path.line(from, to);
      }
    }
  }

  /** Arrows from the first ribbon of each bay towards the last. */
  Svg arrows() {
    Svg svg = new Svg();
    for (int i = 0; i < bays.size(); i++) {
      Coordinate first = middles.get(i).get(0);
      Coordinate last = middles.get(i).get(middles.get(i).size() - 1);
      if (first.distance(last) > SHORTEST) {
        LineSegment line = beside(arrow(first, last, axis(bays.get(i).get(0))));
        Symbols.travel(svg, line.p0, line.p1);
        sheet.labels().block(line.p0, line.p1, 7);
      }
    }
    return svg;
  }

  /** Straight across the first ribbon, on the side of the last. */
  private static LineSegment arrow(Coordinate first, Coordinate last, Vector2D across) {
    Vector2D toLast = new Vector2D(first, last);
    double length = Math.min(ARROW, 0.5 * toLast.length());
    double ahead = across.dot(toLast.normalize());
    boolean clear = Math.abs(ahead) > CLEAR;
    Vector2D along = clear ? across.multiply(Math.signum(ahead)) : toLast.normalize();
    return new LineSegment(first, along.multiply(length).translate(first));
  }

  /** Across a ribbon: along the line over which it is narrowest. */
  private Vector2D axis(Ribbon ribbon) {
    LineString narrowest = new MinimumDiameter(ribbon.outline().polygon()).getDiameter();
    Vector2D across =
        new Vector2D(narrowest.getCoordinateN(0), narrowest.getCoordinateN(1)).normalize();
    return new Vector2D(across.getX(), -across.getY());
  }

  /** Off the numbers, on the side on which it stays in a room. */
  private LineSegment beside(LineSegment line) {
    for (double off : new double[] {OFF_NUMBERS, -OFF_NUMBERS}) {
      LineSegment moved = line.offset(off);
      if (inRoom(moved.p0) && inRoom(moved.p1)) {
        return moved;
      }
    }
    return line;
  }

  private boolean inRoom(Coordinate at) {
    Coordinate onPlan = sheet.view().onPlan(at.x, at.y);
    return sheet.rooms().stream()
        .anyMatch(room -> SimplePointInAreaLocator.locate(onPlan, room) == Location.INTERIOR);
  }

  /** First and last of all bays, before what matters less. */
  void numberEnds() {
    for (int i = 0; i < bays.size(); i++) {
      number(i, 0);
      number(i, bays.get(i).size() - 1);
    }
  }

  void numberOthers() {
    for (int i = 0; i < bays.size(); i++) {
      for (int j = every; j < bays.get(i).size() - 1; j += every) {
        number(i, j);
      }
    }
  }

  private void number(int bay, int ribbon) {
    Coordinate at = middles.get(bay).get(ribbon);
    String order = Integer.toString(bays.get(bay).get(ribbon).order());
    Label label = new Label(order, at.x, at.y, Look.RIBBON);
    Ribbon strip = bays.get(bay).get(ribbon);
    Vector2D along = axis(strip).rotateByQuarterCircle(1);
    for (double shift : SHIFTS) {
      Coordinate moved = along.multiply(shift).translate(at);
      if (inside(strip, moved) && sheet.labels().place(label.movedTo(moved.x, moved.y))) {
        return;
      }
    }
  }

  private boolean inside(Ribbon ribbon, Coordinate at) {
    Coordinate onPlan = sheet.view().onPlan(at.x, at.y);
    Polygon strip = ribbon.outline().polygon();
    return SimplePointInAreaLocator.locate(onPlan, strip) == Location.INTERIOR;
  }
}
