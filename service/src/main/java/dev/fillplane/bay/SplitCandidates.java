package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Where a dam may divide a bay: from inner corners straight on along their walls, between inner
 * corners up to 3 m apart, half way square to the travel, and along the travel in the middle.
 * Neither side is under 1 m2 or a tenth of the bay, and no dam leaves a passage under 40 cm. Own
 * rule, no source.
 */
public final class SplitCandidates {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double OFF_CORNER = 1e-6;
  private static final double SAME = 0.01;
  private static final double DOORWAY = 1.5;
  private static final double NECK = 3.0;
  private static final double HALF_A_STEP = 0.2;
  private static final double LEAST_AREA = 1.0;
  private static final double LEAST_SHARE = 0.1;
  private static final int MOST = 12;

  private final Bay bay;
  private final double far;
  private final int whole;
  private final List<Split> found = new ArrayList<>();

  private SplitCandidates(Bay bay) {
    this.bay = bay;
    this.whole = walkable(bay.polygon());
    this.far = bay.polygon().getEnvelopeInternal().getDiameter() + 1;
  }

  /** The candidates, at most 12, the shortest dam first. */
  public static List<Split> of(Bay bay) {
    SplitCandidates candidates = new SplitCandidates(bay);
    candidates.fromCorners();
    candidates.halfWay(true);
    candidates.halfWay(false);
    candidates.found.sort(Comparator.comparingDouble(Split::length));
    return candidates.found.stream().filter(candidates::divides).limit(MOST).toList();
  }

  private void fromCorners() {
    List<InnerCorner> corners = InnerCorner.of(bay.polygon());
    for (int i = 0; i < corners.size(); i++) {
      for (int j = i + 1; j < corners.size(); j++) {
        between(corners.get(i).at(), corners.get(j).at());
      }
    }
    for (InnerCorner corner : corners) {
      straightOn(corner.before(), corner.at());
      straightOn(corner.after(), corner.at());
    }
  }

  private void straightOn(Coordinate from, Coordinate corner) {
    double length = from.distance(corner);
    double dx = (corner.x - from.x) / length;
    double dy = (corner.y - from.y) / length;
    Coordinate start = new Coordinate(corner.x + OFF_CORNER * dx, corner.y + OFF_CORNER * dy);
    Coordinate end = new Coordinate(corner.x + far * dx, corner.y + far * dy);
    for (LineString line : inside(start, end)) {
      if (line.getCoordinateN(0).distance(start) < SAME) {
        add(SplitKind.NECK, corner, line.getCoordinateN(line.getNumPoints() - 1));
      }
    }
  }

  private void between(Coordinate a, Coordinate b) {
    double distance = a.distance(b);
    boolean near = distance > SAME && distance <= NECK;
    if (near && inside(a, b).stream().anyMatch(line -> line.getLength() > distance - SAME)) {
      add(distance <= DOORWAY ? SplitKind.DOORWAY : SplitKind.NECK, a, b);
    }
  }

  /** Half way along the travel or across it, else at 0.4 or 0.6. */
  private void halfWay(boolean square) {
    Envelope box = bay.travel().toFrame().transform(bay.polygon()).getEnvelopeInternal();
    for (double share : new double[] {0.5, 0.4, 0.6}) {
      double along = box.getMinX() + share * box.getWidth();
      double across = box.getMinY() + share * box.getHeight();
      Position from =
          square
              ? bay.travel().at(along, box.getMinY() - 1)
              : bay.travel().at(box.getMinX() - 1, across);
      Position to =
          square
              ? bay.travel().at(along, box.getMaxY() + 1)
              : bay.travel().at(box.getMaxX() + 1, across);
      int before = found.size();
      for (LineString line : inside(JointLine.coordinate(from), JointLine.coordinate(to))) {
        Coordinate end = line.getCoordinateN(line.getNumPoints() - 1);
        add(square ? SplitKind.ACROSS : SplitKind.ALONG, line.getCoordinateN(0), end);
      }
      if (found.subList(before, found.size()).stream().anyMatch(this::divides)) {
        return;
      }
    }
  }

  @SuppressWarnings("unchecked")
  private List<LineString> inside(Coordinate from, Coordinate to) {
    Geometry line = GEOMETRY.createLineString(new Coordinate[] {from, to});
    return (List<LineString>) LinearComponentExtracter.getLines(line.intersection(bay.polygon()));
  }

  private void add(SplitKind kind, Coordinate from, Coordinate to) {
    Split next = new Split(kind, Travel.position(from), Travel.position(to));
    if (next.length() > SAME && found.stream().noneMatch(split -> same(split, next))) {
      found.add(next);
    }
  }

  private static boolean same(Split a, Split b) {
    boolean straight = a.from().distance(b.from()) < SAME && a.to().distance(b.to()) < SAME;
    return straight || a.from().distance(b.to()) < SAME && a.to().distance(b.from()) < SAME;
  }

  private boolean divides(Split split) {
    List<Polygon> parts = DamCut.parts(bay.polygon(), split);
    double least = Math.max(LEAST_AREA, LEAST_SHARE * bay.polygon().getArea());
    return parts.size() > 1
        && parts.stream().allMatch(part -> part.getArea() >= least && walkable(part) <= whole);
  }

  /** In how many pieces a part falls where it is narrower than 40 cm. */
  private static int walkable(Polygon part) {
    return part.buffer(-HALF_A_STEP, 1).getNumGeometries();
  }
}
