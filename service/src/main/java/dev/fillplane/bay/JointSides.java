package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** Where two parts of a floor lie on the two sides of one joint. */
final class JointSides {

  /** What can be stepped across. */
  private static final double WALKABLE = 0.3;

  private JointSides() {}

  /**
   * Places on a joint that one may walk across from the part on its left to that on its right: the
   * middle and both ends of each stretch of 0.3 m or more that has them on its sides; none where
   * there is no such stretch.
   */
  static List<Position> between(JointLine joint, Polygon left, Polygon right) {
    List<Position> places = new ArrayList<>();
    for (double[] a : stretches(joint.line(), joint.beside(true), left)) {
      for (double[] b : stretches(joint.line(), joint.beside(false), right)) {
        places.addAll(places(joint.line(), Math.max(a[0], b[0]), Math.min(a[1], b[1])));
      }
    }
    return places;
  }

  /** The middle and both ends, where that is far enough to walk. */
  static List<Position> places(LineSegment line, double from, double to) {
    double length = line.getLength();
    if ((to - from) * length < WALKABLE) {
      return List.of();
    }
    double inset = Math.min((to - from) / 4, WALKABLE / length);
    return List.of(
        Travel.position(line.pointAlong((from + to) / 2)),
        Travel.position(line.pointAlong(from + inset)),
        Travel.position(line.pointAlong(to - inset)));
  }

  /** The stretches of a line beside a joint that lie in a part, as shares of the joint. */
  @SuppressWarnings("unchecked")
  private static List<double[]> stretches(LineSegment joint, LineString beside, Polygon part) {
    if (!beside.getEnvelopeInternal().intersects(part.getEnvelopeInternal())) {
      return List.of();
    }
    Geometry common = beside.intersection(part);
    List<double[]> stretches = new ArrayList<>();
    for (LineString line : (List<LineString>) LinearComponentExtracter.getLines(common)) {
      Coordinate[] ends = line.getCoordinates();
      if (ends.length == 0) {
        continue;
      }
      double a = joint.projectionFactor(ends[0]);
      double b = joint.projectionFactor(ends[ends.length - 1]);
      stretches.add(new double[] {Math.min(a, b), Math.max(a, b)});
    }
    return stretches;
  }
}
