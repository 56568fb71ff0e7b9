package dev.fillplane.screed;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Joint;
import dev.fillplane.bay.JointKind;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The edges of bays poured earlier that a screed can run on: along the travel, beside the bay and
 * for nine tenths of its length.
 */
final class FinishedEdges {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double BESIDE = 0.03;
  private static final double SHARE = 0.9;
  private static final double PARALLEL = Math.tan(Math.toRadians(5));

  private FinishedEdges() {}

  /** Where they lie across the travel of a bay. */
  static List<Double> of(BayPlan plan, Bay bay, Envelope box) {
    List<Double> edges = new ArrayList<>();
    for (Joint joint : plan.joints()) {
      boolean earlier = !joint.bay().equals(bay.id()) && joint.kind() != JointKind.DOORWAY;
      if (earlier && isBeside(joint, bay) && runsAlong(joint, bay, box)) {
        edges.add((across(joint.from(), bay) + across(joint.to(), bay)) / 2);
      }
    }
    return edges;
  }

  private static boolean isBeside(Joint joint, Bay bay) {
    double x = (joint.from().x() + joint.to().x()) / 2;
    double y = (joint.from().y() + joint.to().y()) / 2;
    return bay.polygon().isWithinDistance(GEOMETRY.createPoint(new Coordinate(x, y)), BESIDE);
  }

  private static boolean runsAlong(Joint joint, Bay bay, Envelope box) {
    double along = Math.abs(bay.travel().along(joint.to()) - bay.travel().along(joint.from()));
    double across = Math.abs(across(joint.to(), bay) - across(joint.from(), bay));
    return across <= PARALLEL * along && along >= SHARE * box.getWidth();
  }

  private static double across(Position end, Bay bay) {
    return bay.travel().across(end);
  }
}
