package dev.fillplane.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.surface.PlannedSpot;
import dev.fillplane.surface.SpotReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SurveyWalkTest {

  /** Six places at random against every order there is: 2-opt is hardly longer than the best. */
  @Test
  void walksAreHardlyLongerThanTheBest() {
    Room room = room("hall", 0, exit(4));
    Random random = new Random(6);
    double ratio = 0;
    for (int i = 0; i < 40; i++) {
      List<PlannedSpot> spots = new ArrayList<>();
      for (int k = 0; k < 6; k++) {
        spots.add(spot(0, 8 * random.nextDouble(), 6 * random.nextDouble()));
      }
      SurveyWalk walk = SurveyWalk.over(List.of(room), spots, new Findings());
      double best = shortest(4, 0, spots);
      assertTrue(walk.length() >= best - 1e-9);
      ratio += walk.length() / best / 40;
    }
    assertTrue(ratio < 1.03, "on average " + ratio);
  }

  private static double shortest(double x, double y, List<PlannedSpot> left) {
    double best = left.isEmpty() ? 0 : Double.POSITIVE_INFINITY;
    for (PlannedSpot spot : left) {
      List<PlannedSpot> rest = new ArrayList<>(left);
      rest.remove(spot);
      double leg = Math.hypot(spot.x() - x, spot.y() - y);
      best = Math.min(best, leg + shortest(spot.x(), spot.y(), rest));
    }
    return best;
  }

  /** Rooms of 8 x 6 m in a row; doors on the line y = 3. */
  @Test
  void roomBehindADoorwayComesBeforeTheNextDoorway() {
    List<Room> rooms =
        List.of(
            room("a", 8, door(16, "behind a")),
            room("hall", 0, exit(4), door(8, "a"), door(0, "b")),
            room("b", -8),
            room("behind a", 16));
    assertEquals(List.of(1, 0, 3, 2), new RoomWays(rooms).order());
    SurveyWalk walk =
        SurveyWalk.over(
            rooms, List.of(spot(3, 20, 3), spot(1, 4, 3), spot(2, -4, 3)), new Findings());
    assertEquals(
        List.of("hall", "behind a", "b"), walk.stops().stream().map(SurveyStop::room).toList());
    assertEquals(3 + 16 + 24, walk.length(), 1e-9);
  }

  @Test
  void roomsWithoutADoorwayComeLast() {
    List<Room> rooms = List.of(room("alone", 8), room("hall", 0, exit(4)));
    assertEquals(List.of(1, 0), new RoomWays(rooms).order());
    assertEquals(List.of(), new RoomWays(rooms).doorsBetween(1, 0));
  }

  private static PlannedSpot spot(int room, double x, double y) {
    return new PlannedSpot(x, y, room, SpotReason.INSIDE);
  }

  private static Room room(String id, double west, Opening... openings) {
    List<Position> ring = new ArrayList<>();
    for (double[] p : new double[][] {{0, 0}, {8, 0}, {8, 6}, {0, 6}, {0, 0}}) {
      ring.add(new Position(west + p[0], p[1]));
    }
    return new Room(
        id,
        new Outline(List.of(ring)),
        Optional.empty(),
        null,
        OptionalInt.empty(),
        List.of(openings));
  }

  private static Opening exit(double x) {
    return new Opening(
        "out",
        new Position(x - 0.4, 0),
        new Position(x + 0.4, 0),
        OpeningKind.EXIT,
        Optional.empty());
  }

  private static Opening door(double x, String into) {
    return new Opening(
        "to " + into,
        new Position(x, 2.6),
        new Position(x, 3.4),
        OpeningKind.DOORWAY,
        Optional.of(into));
  }
}
