package dev.fillplane.bay;

import dev.fillplane.finding.Remark;
import dev.fillplane.room.Feature;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Adds up what features ask for; lines count as far as they run through the rooms. */
public final class Preparations {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final List<Room> rooms;
  private final List<Polygon> polygons;
  private final List<KeptOpen> keepOpen = new ArrayList<>();
  private double cracks;
  private double joints;
  private double foam;

  private Preparations(List<Room> rooms) {
    this.rooms = rooms;
    this.polygons = rooms.stream().map(room -> room.outline().polygon()).toList();
  }

  /** Of valid features in valid rooms. */
  public static Preparation of(List<Room> rooms, List<Feature> features) {
    if (features.isEmpty()) {
      return Preparation.none();
    }
    Preparations all = new Preparations(rooms);
    for (int i = 0; i < features.size(); i++) {
      all.add(i, features.get(i));
    }
    return new Preparation(all.keepOpen, all.cracks, all.joints, all.foam);
  }

  private void add(int number, Feature feature) {
    switch (feature.kind()) {
      case CRACK -> cracks += inRooms(feature);
      case GAP -> foam += inRooms(feature) * feature.width().orElse(0) * feature.depth().orElse(0);
      case MOVING_JOINT -> {
        joints += inRooms(feature);
        keep(number, feature, Remark.of("carry-joint-through"));
      }
      case CABLE -> keep(number, feature, Remark.of("seal-cable"));
      default -> keep(number, feature, Remark.of("tape-off", "kind", feature.kind().title()));
    }
  }

  /** Along a wall between two rooms a line counts once. */
  private double inRooms(Feature feature) {
    double length = 0;
    for (Polygon room : polygons) {
      length += JointLine.between(feature).intersection(room).getLength();
    }
    return Math.min(length, feature.length());
  }

  private void keep(int number, Feature feature, Remark what) {
    Position middle = feature.hasLine() ? middle(feature) : feature.at().orElseThrow();
    int room = nearest(middle);
    Optional<Outline> outline =
        feature.kind().staysOpen()
            ? Optional.of(Outline.of(RoomParts.island(polygons.get(room), feature)))
            : Optional.empty();
    keepOpen.add(
        new KeptOpen(
            number, feature.kind(), rooms.get(room).id(), middle.x(), middle.y(), outline, what));
  }

  private static Position middle(Feature feature) {
    Position from = feature.from().orElseThrow();
    Position to = feature.to().orElseThrow();
    return new Position((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  private int nearest(Position place) {
    Point point = GEOMETRY.createPoint(new Coordinate(place.x(), place.y()));
    int nearest = 0;
    for (int i = 1; i < polygons.size(); i++) {
      boolean nearer = polygons.get(i).distance(point) < polygons.get(nearest).distance(point);
      nearest = nearer ? i : nearest;
    }
    return nearest;
  }
}
