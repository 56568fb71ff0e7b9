package dev.fillplane.bay;

import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * Cuts moving joints and all that stays open out of a room. A drain, a box or a flange is a square
 * along the longest wall, 3 cm wider on each side for its tape and form (common practice, no
 * source).
 *
 * @param parts what is left of the room, connected each
 * @param joints the moving joints in it
 */
record RoomParts(List<Polygon> parts, List<JointLine> joints) {

  /** Width of what stays open unless told (common practice, no source). */
  static final double USUAL_WIDTH = 0.15;

  /** Room for tape and form on each side (common practice, no source). */
  static final double MARGIN = 0.03;

  /** Smaller bits, between a drain and the wall, are nobody's to pour as a bay. */
  private static final double CRUMB = 0.01;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  static RoomParts of(Polygon room, List<Feature> features) {
    List<JointLine> joints = new ArrayList<>();
    List<Polygon> away = new ArrayList<>();
    for (Feature feature : features) {
      if (feature.kind() == FeatureKind.MOVING_JOINT) {
        joints.addAll(JointLine.in(room, feature));
      } else if (feature.kind().staysOpen()) {
        away.add(island(room, feature));
      }
    }
    joints.forEach(joint -> away.add(joint.slit()));
    away.removeIf(one -> !one.getEnvelopeInternal().intersects(room.getEnvelopeInternal()));
    return new RoomParts(without(room, away), List.copyOf(joints));
  }

  private static List<Polygon> without(Polygon room, List<Polygon> away) {
    if (away.isEmpty()) {
      return List.of(room);
    }
    Geometry all = CascadedPolygonUnion.union(away);
    return Overlay.difference(room, all).stream().filter(p -> p.getArea() >= CRUMB).toList();
  }

  /** The square that is left open. */
  static Polygon island(Polygon room, Feature feature) {
    Travel along = Directions.of(room).get(0);
    Position middle = feature.at().orElseThrow();
    double half = feature.width().orElse(USUAL_WIDTH) / 2 + MARGIN;
    Coordinate at = new Coordinate(along.along(middle), along.across(middle));
    Envelope square = new Envelope(at);
    square.expandBy(half);
    return (Polygon) along.toPlan().transform(GEOMETRY.toGeometry(square));
  }
}
