package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * An independent check, by squares of 5 cm and nothing else, that every ribbon can be walked to
 * when its turn comes, over floor that no ribbon of the same pass has covered yet, from an exit;
 * from the place where the bay is left if there is none. Joints and doorways up to 15 cm are
 * stepped over. As whoever pours it came that way, whoever has poured it can leave that way.
 */
final class WalkCheck {

  private static final double SQUARE = 0.05;
  private static final double AT_THE_DOOR = 0.55;
  private static final int STEP = 3;

  /** A smaller ribbon, m2, is filled from beside, at arm's length. */
  private static final double NOOK = 0.1;

  /** And so is one that is nowhere as wide. */
  private static final double CRACK = 0.2;

  /** Largest share of a ribbon that may be cut off: a square at its edge belongs to nobody. */
  private static final double SHARE = 0.02;

  private final double minX;
  private final double minY;
  private final int columns;
  private final int rows;
  private final boolean[] floor;
  private final boolean[] poured;

  private WalkCheck(List<Room> rooms) {
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (Room room : rooms) {
      for (Position p : room.outline().rings().get(0)) {
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
      }
    }
    minX = box[0];
    minY = box[1];
    columns = (int) Math.ceil((box[2] - minX) / SQUARE);
    rows = (int) Math.ceil((box[3] - minY) / SQUARE);
    floor = new boolean[columns * rows];
    poured = new boolean[columns * rows];
    for (Room room : rooms) {
      for (int square : in(room.outline().polygon())) {
        floor[square] = true;
      }
    }
  }

  /** Fails where somebody is walled in. */
  static void assertNobodyIsWalledIn(List<Room> rooms, BayPlan plan) {
    WalkCheck check = new WalkCheck(rooms);
    List<Position> exits = new ArrayList<>();
    for (Room room : rooms) {
      room.openings().stream()
          .filter(opening -> opening.kind() == OpeningKind.EXIT)
          .map(Opening::middle)
          .forEach(exits::add);
    }
    Bay before = plan.bays().get(0);
    for (Bay bay : plan.bays()) {
      if (bay.pocket() != before.pocket() || bay.lift() != before.lift()) {
        // The next pass begins when the last one can be walked on.
        Arrays.fill(check.poured, false);
      }
      check.pour(bay, exits.isEmpty() ? List.of(bay.wayOut()) : exits);
      before = bay;
    }
  }

  private void pour(Bay bay, List<Position> exits) {
    for (Strip strip : bay.strips()) {
      List<Integer> squares = in(strip.polygon());
      boolean[] reached = reached(exits);
      long lost = squares.stream().filter(square -> !reached[square]).count();
      assertTrue(
          isNook(strip.polygon()) || lost <= SHARE * squares.size() + 2,
          lost
              + " of "
              + squares.size()
              + " squares of ribbon "
              + strip.order()
              + " of "
              + bay.id());
      squares.forEach(square -> poured[square] = true);
    }
  }

  private static boolean isNook(Polygon ribbon) {
    return ribbon.getArea() < NOOK || ribbon.buffer(-CRACK / 2).isEmpty();
  }

  private boolean[] reached(List<Position> exits) {
    boolean[] reached = new boolean[floor.length];
    Deque<Integer> next = new ArrayDeque<>();
    for (int square = 0; square < floor.length; square++) {
      Position at = middle(square);
      if (free(square) && exits.stream().anyMatch(exit -> exit.distance(at) <= AT_THE_DOOR)) {
        reached[square] = true;
        next.add(square);
      }
    }
    while (!next.isEmpty()) {
      int square = next.remove();
      for (int[] way : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        for (int step = 1; step <= STEP; step++) {
          int column = square % columns + step * way[0];
          int row = square / columns + step * way[1];
          if (column < 0 || row < 0 || column >= columns || row >= rows) {
            break;
          }
          int there = row * columns + column;
          if (free(there)) {
            if (!reached[there]) {
              reached[there] = true;
              next.add(there);
            }
            break;
          }
          if (floor[there] && poured[there]) {
            break;
          }
        }
      }
    }
    return reached;
  }

  private boolean free(int square) {
    return floor[square] && !poured[square];
  }

  private Position middle(int square) {
    return new Position(
        minX + (square % columns + 0.5) * SQUARE, minY + (square / columns + 0.5) * SQUARE);
  }

  private List<Integer> in(Polygon polygon) {
    List<Integer> squares = new ArrayList<>();
    var box = polygon.getEnvelopeInternal();
    for (int square = 0; square < columns * rows; square++) {
      Position p = middle(square);
      Coordinate at = new Coordinate(p.x(), p.y());
      if (box.covers(at) && SimplePointInAreaLocator.locate(at, polygon) == Location.INTERIOR) {
        squares.add(square);
      }
    }
    return squares;
  }
}
