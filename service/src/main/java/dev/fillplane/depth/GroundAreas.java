package dev.fillplane.depth;

import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * The connected parts of the floor that are ground, the highest first. Their outlines come from the
 * centres of the cells; the exact area and volume of all are shared out by them, so that the parts
 * add up to the whole.
 */
public final class GroundAreas {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Less of a floor than this is nobody's to grind. */
  private static final double LEAST_AREA = 1e-6;

  private final FloorSample floor;
  private final DepthField field;
  private final List<Part> parts = new ArrayList<>();

  private GroundAreas(DepthField field) {
    this.field = field;
    floor = field.floor();
  }

  /** The parts of a floor above what it is ground to; none where nothing is ground. */
  public static List<GroundArea> of(DepthField field) {
    if (!field.grinds() || field.grindArea() < LEAST_AREA) {
      return List.of();
    }
    GroundAreas areas = new GroundAreas(field);
    areas.findParts();
    areas.findTops();
    return areas.told();
  }

  private void findParts() {
    CarriedNodes nodes = CarriedNodes.of(floor.columns(), floor.rows(), heights());
    for (int room = 0; room < floor.rooms().size(); room++) {
      Polygon outline = floor.rooms().get(room).outline().polygon();
      for (Polygon polygon : HighParts.of(nodes, 0, outline, this::onPlan)) {
        parts.add(new Part(polygon, field.ground(room, polygon)));
      }
    }
  }

  private double[] heights() {
    double[] heights = new double[floor.columns() * floor.rows()];
    for (int row = 0; row < floor.rows(); row++) {
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
    FloorPoints points = floor.points();
    for (int i = 0; i < points.count(); i++) {
      double x = points.x()[i];
      double y = points.y()[i];
      double above = field.above(x, y, points.elevation()[i]);
      if (above > 0) {
        Point point = GEOMETRY.createPoint(new Coordinate(x, y));
        parts.stream()
            .filter(part -> above > part.height && part.isNear(point, floor.cell()))
            .forEach(part -> part.top(x, y, above));
      }
    }
  }

  private List<GroundArea> told() {
    double area = 0;
    double volume = 0;
    for (Part part : parts) {
      area += part.fill.area();
      volume += part.fill.volume();
    }
    double moreArea = area > 0 ? field.grindArea() / area : 0;
    double moreVolume = volume > 0 ? field.grindVolume() / volume : 0;
    return parts.stream()
        .filter(part -> part.fill.area() > 0)
        .map(part -> part.told(moreArea, moreVolume))
        .sorted(Comparator.comparingDouble(GroundArea::height).reversed())
        .toList();
  }

  /** One part and its highest place so far. */
  private static final class Part {

    private final Polygon polygon;
    private final Fill fill;
    private double x;
    private double y;
    private double height;

    Part(Polygon polygon, Fill fill) {
      this.polygon = polygon;
      this.fill = fill;
      x = polygon.getInteriorPoint().getX();
      y = polygon.getInteriorPoint().getY();
    }

    boolean isNear(Point point, double distance) {
      return polygon.getEnvelopeInternal().distance(point.getEnvelopeInternal()) <= distance
          && polygon.isWithinDistance(point, distance);
    }

    void top(double atX, double atY, double above) {
      x = atX;
      y = atY;
      height = above;
    }

    GroundArea told(double moreArea, double moreVolume) {
      return new GroundArea(
          x,
          y,
          HighParts.outline(polygon),
          fill.area() * moreArea,
          height,
          fill.volume() * moreVolume);
    }
  }
}
