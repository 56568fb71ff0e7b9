package dev.fillplane.depth;

import dev.fillplane.room.Outline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * The connected parts of a room where a lattice of values is at least at a level, as polygons. As
 * exact as linear interpolation along the edges of the lattice.
 */
public final class HighParts {

  /** What an outline may miss by, where it is drawn on the floor. */
  private static final double CHALK = 0.02;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private HighParts() {}

  /**
   * The parts, the largest first.
   *
   * @param room valid
   * @param onPlan from columns and rows of the lattice to plan coordinates
   */
  public static List<Polygon> of(
      CarriedNodes nodes, double level, Polygon room, UnaryOperator<Coordinate> onPlan) {
    List<Polygon> parts = new ArrayList<>();
    Geometry high = region(LevelRings.above(nodes, level), onPlan);
    Geometry inside = OverlayNGRobust.overlay(high, room, OverlayNG.INTERSECTION);
    for (int i = 0; i < inside.getNumGeometries(); i++) {
      if (inside.getGeometryN(i) instanceof Polygon part && !part.isEmpty()) {
        parts.add(part);
      }
    }
    parts.sort(Comparator.comparingDouble(Polygon::getArea).reversed());
    return List.copyOf(parts);
  }

  /** The polygonizer finds which ring is a hole in which. */
  private static Geometry region(List<Coordinate[]> rings, UnaryOperator<Coordinate> onPlan) {
    Polygonizer polygonizer = new Polygonizer(true);
    for (Coordinate[] ring : rings) {
      polygonizer.add(
          GEOMETRY.createLinearRing(Arrays.stream(ring).map(onPlan).toArray(Coordinate[]::new)));
    }
    return polygonizer.getGeometry();
  }

  /** The outline of a part as it can be chalked on the floor, within 2 cm. */
  public static Outline outline(Polygon part) {
    Geometry simple = TopologyPreservingSimplifier.simplify(part, CHALK);
    Polygon polygon = simple instanceof Polygon kept && !kept.isEmpty() ? kept : part;
    return Outline.of(polygon);
  }
}
