package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Whether the features of a request are whole and lie in a room; what to do about each. */
public final class FeatureCheck {

  /** A shorter line is none, and so is a shorter part of one in a room. */
  static final double SHORTEST = 0.001;

  /** Wider than this nothing in a floor stays open; it is an island of the outline. */
  static final double WIDEST = 2.0;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Place place;
  private final Findings findings;

  private FeatureCheck(Place place, Findings findings) {
    this.place = place;
    this.findings = findings;
  }

  /**
   * Adds what is wrong with features, and what must not be forgotten about them.
   *
   * @param rooms looked at only where nothing has been found wrong so far
   * @param place where the list of features stands in the request
   */
  public static void check(
      List<Feature> features, List<Room> rooms, Place place, Findings findings) {
    boolean outlinesHold = !findings.hasErrors();
    Floorplan plan = outlinesHold && !features.isEmpty() ? new Floorplan(rooms) : null;
    for (int i = 0; i < features.size(); i++) {
      Stopped.ifInterrupted();
      FeatureCheck check = new FeatureCheck(place.at(i), findings);
      int before = findings.size();
      check.shape(features.get(i));
      if (outlinesHold && findings.size() == before) {
        check.position(features.get(i), rooms, plan);
      }
    }
  }

  private void shape(Feature feature) {
    boolean place = feature.at().isPresent();
    boolean anyEnd = feature.from().isPresent() || feature.to().isPresent();
    if (place && anyEnd) {
      error("feature-line-and-place", feature);
    } else if (feature.kind().isLine() && !(cableOut(feature) || feature.hasLine())) {
      error("feature-without-line", feature);
    } else if (!feature.kind().isLine() && !place) {
      error("feature-without-place", feature);
    } else if (feature.hasLine() && !(feature.length() >= SHORTEST)) {
      error("feature-of-no-length", feature);
    }
    size(feature);
    if (feature.moving().isPresent()) {
      moving(feature);
    }
  }

  /** A crack that moves must not be poured over. */
  private void moving(Feature feature) {
    if (feature.kind() != FeatureKind.CRACK) {
      findings.error("moving-of-no-crack", place.at("moving"), "kind", name(feature));
    } else if (feature.moving().get()) {
      findings.error("crack-moves", place.at("moving"));
    }
  }

  private static boolean cableOut(Feature feature) {
    return feature.kind() == FeatureKind.CABLE && feature.at().isPresent();
  }

  private void size(Feature feature) {
    boolean sized = feature.width().isPresent() && feature.depth().isPresent();
    if (feature.kind() == FeatureKind.GAP && !sized) {
      error("gap-without-size", feature);
    }
    feature.width().ifPresent(width -> size(width, "width", feature));
    feature.depth().ifPresent(depth -> size(depth, "depth", feature));
  }

  private void size(double told, String name, Feature feature) {
    if (!(told > 0 && told <= WIDEST)) {
      findings.error(
          "feature-too-wide",
          place.at(name),
          "kind",
          name(feature),
          "told",
          Amount.of(told, Dimension.HEIGHT),
          "most",
          Amount.of(WIDEST, Dimension.HEIGHT));
    }
  }

  private void position(Feature feature, List<Room> rooms, Floorplan plan) {
    boolean inside =
        feature.hasLine()
            ? rooms.stream().anyMatch(room -> runsThrough(feature, room))
            : feature.at().map(at -> plan.roomAt(at.x(), at.y()).isPresent()).orElse(false);
    if (!inside) {
      error("feature-outside", feature);
    } else {
      remind(feature);
      if (feature.kind() == FeatureKind.MOVING_JOINT) {
        end(feature.from().orElseThrow(), "from", rooms);
        end(feature.to().orElseThrow(), "to", rooms);
      }
    }
  }

  /** A joint usually runs from wall to wall. */
  private void end(Position end, String name, List<Room> rooms) {
    Point point = GEOMETRY.createPoint(new Coordinate(end.x(), end.y()));
    for (Room room : rooms) {
      Polygon polygon = room.outline().polygon();
      if (polygon.contains(point) && polygon.getBoundary().distance(point) > Floorplan.BESIDE) {
        findings.warning("moving-joint-ends-inside", place.at(name), "room", room.id());
      }
    }
  }

  /** Whether a line lies in a room for some of its length; along a wall counts. */
  private static boolean runsThrough(Feature line, Room room) {
    Geometry common = between(line).intersection(room.outline().polygon());
    return common.getLength() >= SHORTEST;
  }

  private static LineString between(Feature line) {
    Position from = line.from().orElseThrow();
    Position to = line.to().orElseThrow();
    return GEOMETRY.createLineString(
        new Coordinate[] {new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y())});
  }

  private void remind(Feature feature) {
    switch (feature.kind()) {
      case MOVING_JOINT -> findings.warning("moving-joint-carried-through", place);
      case CRACK -> {
        if (feature.moving().isEmpty()) {
          findings.warning("crack-must-be-dormant", place);
        }
      }
      case DRAIN, BOX, FLANGE -> findings.warning("kept-open", place, "kind", name(feature));
      default -> {}
    }
  }

  private void error(String code, Feature feature) {
    findings.error(code, place, "kind", name(feature));
  }

  /** As it stands in the middle of a sentence. */
  private static String name(Feature feature) {
    return feature.kind().title();
  }
}
