package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Divides one bay of a plan by a dam. The part at the way out is poured last; each other part is
 * left over the dam, before the next one is poured.
 */
final class BaySplitter {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** A part still to be poured with the places where it is left. */
  private record Placed(Polygon part, List<Position> places) {}

  private final List<Bay> bays;
  private final List<Joint> joints;
  private final RibbonRule rule;

  BaySplitter(List<Bay> bays, List<Joint> joints, RibbonRule rule) {
    this.bays = bays;
    this.joints = joints;
    this.rule = rule;
  }

  BayPlan split(Bay bay, Split dam) {
    int at = bays.indexOf(bay);
    if (at < 0) {
      throw new IllegalArgumentException("no bay of this plan: " + bay.id());
    }
    List<Placed> placed = lastFirst(bay, DamCut.parts(bay.polygon(), dam));
    if (placed.size() < 2) {
      throw new IllegalArgumentException("the dam does not divide the bay " + bay.id());
    }
    List<Bay> parts = new ArrayList<>();
    BayMaker maker = BayMaker.like(bay, rule);
    for (int i = placed.size() - 1; i >= 0; i--) {
      Placed next = placed.get(i);
      String id = name(bay.id(), parts.size());
      parts.add(maker.make(id, next.part(), next.part(), next.places(), bay.leadsToExit()));
    }
    List<Bay> all = new ArrayList<>(bays);
    all.remove(at);
    all.addAll(at, parts);
    return new BayPlan(all, joints(bay, parts, dam), rule);
  }

  /** hall a, hall b; unlike the name of any bay. */
  private String name(String id, int number) {
    String name = id + " " + (char) ('a' + Math.min(number, 25));
    while (isTaken(name)) {
      name += "'";
    }
    return name;
  }

  private boolean isTaken(String name) {
    return bays.stream().anyMatch(bay -> bay.id().equals(name));
  }

  /** The part at the way out, then those that lead into one before them. */
  private static List<Placed> lastFirst(Bay bay, List<Polygon> parts) {
    Point exit = GEOMETRY.createPoint(JointLine.coordinate(bay.wayOut()));
    List<Polygon> left = new ArrayList<>(parts);
    left.sort(Comparator.comparingDouble(part -> part.distance(exit)));
    List<Placed> placed = new ArrayList<>();
    if (!left.isEmpty()) {
      placed.add(new Placed(left.remove(0), List.of(bay.wayOut())));
    }
    for (boolean more = true; more; ) {
      more = false;
      for (Polygon part : List.copyOf(left)) {
        List<Position> places = over(part, placed);
        if (!places.isEmpty()) {
          placed.add(new Placed(part, places));
          left.remove(part);
          more = true;
        }
      }
    }
    return placed;
  }

  private static List<Position> over(Polygon part, List<Placed> placed) {
    for (Placed other : placed) {
      List<Position> places = new ArrayList<>();
      for (LineString seam : Overlay.seam(part, other.part())) {
        LineSegment line =
            new LineSegment(seam.getCoordinateN(0), seam.getCoordinateN(seam.getNumPoints() - 1));
        places.addAll(JointSides.places(line, 0, 1));
      }
      if (!places.isEmpty()) {
        return places;
      }
    }
    return List.of();
  }

  private List<Joint> joints(Bay bay, List<Bay> parts, Split dam) {
    List<Joint> all = new ArrayList<>();
    for (Joint joint : joints) {
      boolean own = joint.bay().equals(bay.id());
      all.add(own ? joint.ofBay(nearest(parts, joint.middle()).id()) : joint);
    }
    all.add(
        Joint.of(
            parts.get(0).id(),
            JointKind.DAM,
            Optional.empty(),
            dam.from(),
            dam.to(),
            bay.depth()::at));
    return all;
  }

  private static Bay nearest(List<Bay> parts, Position place) {
    Point point = GEOMETRY.createPoint(JointLine.coordinate(place));
    return parts.stream()
        .min(Comparator.comparingDouble(part -> part.polygon().distance(point)))
        .orElseThrow();
  }
}
