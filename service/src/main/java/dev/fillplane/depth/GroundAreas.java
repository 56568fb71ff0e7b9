package dev.fillplane.depth;

import dev.fillplane.finding.Stopped;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The connected parts of the floor that are ground, the highest first. Their outlines come from the
 * centres of the cells; the exact area and volume of the sampled floor are shared out by them, so
 * that the parts add up to the whole.
 *
 * <p>A reading may stand above the floor between the readings. One that stands too high where no
 * part is becomes a part of its own: a cone as wide as the way to the next reading, at least 0.2
 * and at most 1 m across; the 50 highest such readings at most. Nobody has read how wide it is:
 * look there.
 */
public final class GroundAreas {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Less of a floor than this is nobody's to grind. */
  private static final double LEAST_AREA = 1e-6;

  /** Radius of the widest cone round a lone reading, and of the narrowest; own rule, no source. */
  private static final double WIDEST = 0.5;

  private static final double NARROWEST = 0.1;

  /** Lower readings of a crowd are left to those who look. */
  private static final int MOST_LONE = 50;

  private final FloorSample floor;
  private final DepthField field;
  private final Spots readings;
  private final List<Part> parts = new ArrayList<>();

  private GroundAreas(DepthField field, Spots readings) {
    this.field = field;
    this.readings = readings;
    floor = field.floor();
  }

  /**
   * The parts of a floor above what it is ground to; none where nothing is ground.
   *
   * @param readings that lie in the rooms
   */
  public static List<GroundArea> of(DepthField field, Spots readings) {
    if (!field.grinds()) {
      return List.of();
    }
    GroundAreas areas = new GroundAreas(field, readings);
    if (field.grindArea() > LEAST_AREA) {
      areas.findParts();
      areas.findTops();
      areas.shareOut();
    }
    areas.addLoneReadings();
    return areas.told();
  }

  private void findParts() {
    CarriedNodes nodes = CarriedNodes.of(floor.columns(), floor.rows(), heights());
    for (int room = 0; room < floor.rooms().size(); room++) {
      Polygon outline = floor.rooms().get(room).outline().polygon();
      for (Polygon polygon : HighParts.of(nodes, 0, outline, this::onPlan)) {
        Fill fill = field.ground(room, polygon);
        parts.add(new Part(polygon, fill.area(), fill.volume()));
      }
    }
  }

  private double[] heights() {
    double[] heights = new double[floor.columns() * floor.rows()];
    for (int row = 0; row < floor.rows(); row++) {
      Stopped.ifInterrupted();
      for (int column = 0; column < floor.columns(); column++) {
        int node = floor.centre(column, row);
        heights[row * floor.columns() + column] =
            floor.inRoom(node)
                ? field.above(floor.nodeX(node), floor.nodeY(node), floor.nodeElevation(node))
                : Double.NaN;
      }
    }
    return heights;
  }

  private Coordinate onPlan(Coordinate node) {
    return new Coordinate(
        floor.originX() + (node.x + 0.5) * floor.cell(),
        floor.originY() + (node.y + 0.5) * floor.cell());
  }

  /** A top may lie just beside the outline, which is as fine as the cells. */
  private void findTops() {
    List<Top> tops = tops();
    for (Part part : parts) {
      tops.stream()
          .filter(top -> part.isNear(top.point(), floor.cell()))
          .findFirst()
          .ifPresent(top -> part.raise(top.point().getX(), top.point().getY(), top.above()));
    }
  }

  /** A place that is ground. */
  private record Top(Point point, double above) {}

  /** The highest first, of those as high the first from the south-west. */
  private List<Top> tops() {
    FloorPoints points = floor.points();
    List<Top> tops = new ArrayList<>();
    for (int i = 0; i < points.count(); i++) {
      double x = points.x()[i];
      double y = points.y()[i];
      double above = field.above(x, y, points.elevation()[i]);
      if (above > 0) {
        tops.add(new Top(GEOMETRY.createPoint(new Coordinate(x, y)), above));
      }
    }
    tops.sort(Comparator.comparingDouble(Top::above).reversed());
    return tops;
  }

  /** The parts are scaled to what the whole sampled floor takes. */
  private void shareOut() {
    double area = 0;
    double volume = 0;
    for (Part part : parts) {
      area += part.area;
      volume += part.volume;
    }
    for (Part part : parts) {
      part.area *= area > 0 ? field.grindArea() / area : 0;
      part.volume *= volume > 0 ? field.grindVolume() / volume : 0;
    }
  }

  private void addLoneReadings() {
    IntStream.range(0, readings.count())
        .filter(reading -> above(reading) > 0)
        .boxed()
        .sorted(Comparator.comparingDouble(this::above).reversed())
        .limit(MOST_LONE)
        .forEach(this::addReading);
  }

  private double above(int reading) {
    return field.above(readings.x()[reading], readings.y()[reading], readings.elevation()[reading]);
  }

  private void addReading(int reading) {
    double x = readings.x()[reading];
    double y = readings.y()[reading];
    Point point = GEOMETRY.createPoint(new Coordinate(x, y));
    Optional<Part> there =
        parts.stream().filter(part -> part.isNear(point, floor.cell())).findFirst();
    int room = floor.room(x, y);
    if (there.isPresent()) {
      there.get().raise(x, y, above(reading));
    } else if (room >= 0) {
      Polygon outline = floor.rooms().get(room).outline().polygon();
      Geometry disc =
          OverlayNGRobust.overlay(point.buffer(reach(reading)), outline, OverlayNG.INTERSECTION);
      if (disc instanceof Polygon polygon && !polygon.isEmpty()) {
        double volume = polygon.getArea() * above(reading) / 3;
        Part part = new Part(polygon, polygon.getArea(), volume);
        part.raise(x, y, above(reading));
        parts.add(part);
      }
    }
  }

  /** Half the way to the next reading. */
  private double reach(int reading) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < readings.count(); i++) {
      double way =
          Math.hypot(
              readings.x()[i] - readings.x()[reading], readings.y()[i] - readings.y()[reading]);
      nearest = i != reading && way > 0 ? Math.min(nearest, way) : nearest;
    }
    return Math.max(NARROWEST, Math.min(WIDEST, nearest / 2));
  }

  private List<GroundArea> told() {
    return parts.stream()
        .filter(part -> part.area > 0)
        .map(Part::told)
        .sorted(Comparator.comparingDouble(GroundArea::height).reversed())
        .toList();
  }

  /** One part and its highest place so far. */
  private static final class Part {

    private final Polygon polygon;
    private double area;
    private double volume;
    private double x;
    private double y;
    private double height;

    Part(Polygon polygon, double area, double volume) {
      this.polygon = polygon;
      this.area = area;
      this.volume = volume;
      x = polygon.getInteriorPoint().getX();
      y = polygon.getInteriorPoint().getY();
    }

    boolean isNear(Point point, double distance) {
      return polygon.getEnvelopeInternal().distance(point.getEnvelopeInternal()) <= distance
          && polygon.isWithinDistance(point, distance);
    }

    void raise(double atX, double atY, double above) {
      if (above > height) {
        x = atX;
        y = atY;
        height = above;
      }
    }

    GroundArea told() {
      return new GroundArea(x, y, HighParts.outline(polygon), area, height, volume);
    }
  }
}
