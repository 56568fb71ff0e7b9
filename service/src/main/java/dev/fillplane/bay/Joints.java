package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LineSegment;

/**
 * The planned joints of a floor: one at each doorway between two rooms, however often it was told,
 * and the moving joints.
 */
final class Joints {

  /** Doorways of the same two rooms whose middles are closer are one, told from both sides. */
  private static final double SAME = 0.6;

  private record Told(int first, int second, Opening opening) {

    boolean same(Told other) {
      return first == other.first
          && second == other.second
          && opening.middle().distance(other.opening.middle()) < SAME;
    }
  }

  private final List<Room> rooms;
  private final FloorParts floor;
  private final List<Bay> bays;
  private final List<WayOut> ways;
  private final Joint.Stop stop;

  /**
   * Between bays that cover the whole floor, in the order of the pour.
   *
   * @param ways of the bays, in the same order
   */
  Joints(List<Room> rooms, FloorParts floor, List<Bay> bays, List<WayOut> ways, Depths depths) {
    this.rooms = rooms;
    this.floor = floor;
    this.bays = bays;
    this.ways = ways;
    this.stop = Joint.Stop.of(depths);
  }

  List<Joint> all() {
    List<Joint> joints = new ArrayList<>(doorways());
    for (int room = 0; room < rooms.size(); room++) {
      for (JointLine joint : floor.joints(room)) {
        moving(room, joint).ifPresent(joints::add);
      }
    }
    return joints;
  }

  private List<Joint> doorways() {
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < bays.size(); i++) {
      for (Opening opening : floor.openings(ways.get(i).part())) {
        int other = opening.kind() == OpeningKind.DOORWAY ? beyond(opening) : -1;
        Told next = new Told(Math.min(i, other), Math.max(i, other), opening);
        if (other >= 0 && other != i && told.stream().noneMatch(next::same)) {
          told.add(next);
        }
      }
    }
    return told.stream().map(this::doorway).toList();
  }

  private Joint doorway(Told told) {
    Opening opening = told.opening();
    return Joint.of(
        bays.get(told.first()).id(),
        JointKind.DOORWAY,
        Optional.of(opening.id()),
        opening.from(),
        opening.to(),
        stop);
  }

  /** The bay on the other side of a doorway; -1 where that is no room of the plan. */
  private int beyond(Opening opening) {
    for (int room = 0; room < rooms.size(); room++) {
      if (opening.into().equals(Optional.of(rooms.get(room).id()))) {
        return bayOf(floor.nearest(room, opening.middle()));
      }
    }
    return -1;
  }

  private int bayOf(int part) {
    for (int i = 0; i < ways.size(); i++) {
      if (ways.get(i).part() == part) {
        return i;
      }
    }
    return -1;
  }

  /** Of the first bay that it bounds. */
  private Optional<Joint> moving(int room, JointLine joint) {
    LineSegment line = joint.line();
    for (int i = 0; i < bays.size(); i++) {
      FloorPart part = floor.part(ways.get(i).part());
      boolean beside =
          part.room() == room
              && (part.polygon().intersects(joint.beside(true))
                  || part.polygon().intersects(joint.beside(false)));
      if (beside) {
        return Optional.of(
            Joint.of(
                bays.get(i).id(),
                JointKind.MOVING_JOINT,
                Optional.empty(),
                Travel.position(line.p0),
                Travel.position(line.p1),
                stop));
      }
    }
    return Optional.empty();
  }
}
