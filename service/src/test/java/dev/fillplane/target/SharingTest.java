package dev.fillplane.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.TestFloors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Three rooms of 4 x 4 m in a row, the first two joined by a doorway at x = 4. */
class SharingTest {

  private static final Rates RATES = Rates.usual();

  private final Findings findings = new Findings();

  private static HighPoints highs(DoubleBinaryOperator floor) {
    Opening door =
        new Opening(
            "door",
            new Position(4, 1),
            new Position(4, 2),
            OpeningKind.DOORWAY,
            Optional.of("room1"));
    List<Room> rooms = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double west = 4 * i + 0.2 * i;
      double[] ring = {west, 0, west + 4, 0, west + 4, 4, west, 4};
      Room plain = TestFloors.room("room" + i, ring);
      List<Opening> openings = i == 0 ? List.of(door) : List.of();
      rooms.add(
          new Room(
              plain.id(),
              plain.outline(),
              plain.substrate(),
              plain.absorbency(),
              plain.built(),
              openings));
    }
    Spots readings =
        new Spots(
            new double[] {2, 10}, new double[] {2, 2}, new double[] {-0.1, 0.008}, new double[2]);
    FloorSample sample = FloorSample.of(rooms, TestFloors.surface(floor), 0.2);
    return HighPoints.of(sample, readings, List.of("low", "last"));
  }

  private FoundTarget find(
      HighPoints highs, TargetShape shape, Sharing sharing, boolean grind, FixedHeight... fixed) {
    OptionalDouble none = OptionalDouble.empty();
    GrindWish wish = new GrindWish(grind, null, null);
    return TargetFinder.find(
        new TargetWish(
            shape,
            none,
            null,
            null,
            none,
            null,
            sharing,
            wish,
            Optional.empty(),
            List.of(fixed),
            null),
        0.003,
        highs,
        none,
        Place.root().at("target"),
        findings);
  }

  /** 1 mm higher from room to room. */
  private static double stairs(double x, double y) {
    return x < 4.1 ? 0 : x < 8.3 ? 0.001 : 0.002;
  }

  @Test
  void oneForAllOneForTheJoinedOneForEach() {
    HighPoints highs = highs(SharingTest::stairs);
    FoundTarget one = find(highs, TargetShape.LEVEL, Sharing.ONE, false);
    assertEquals(List.of(List.of(0, 1, 2)), one.groups().stream().map(RoomsTarget::rooms).toList());
    assertEquals(0.011, one.plane(0).elevation(), 1e-9);
    FoundTarget joined = find(highs, TargetShape.LEVEL, Sharing.JOINED, false);
    assertEquals(
        List.of(List.of(0, 1), List.of(2)),
        joined.groups().stream().map(RoomsTarget::rooms).toList());
    assertEquals(0.004, joined.plane(1).elevation(), 1e-9);
    assertEquals(0.011, joined.plane(2).elevation(), 1e-9);
    assertTrue(findings.warnings().isEmpty());
    FoundTarget each = find(highs, TargetShape.LEVEL, Sharing.EACH, false);
    assertEquals(0.003, each.plane(0).elevation(), 1e-9);
    assertEquals(0.004, each.plane(1).elevation(), 1e-9);
    assertEquals(Optional.of("last"), each.groups().get(2).boundBy().get(0).point());
  }

  @Test
  void stepAtADoorwayIsWarnedOf() {
    find(highs(SharingTest::stairs), TargetShape.LEVEL, Sharing.EACH, false);
    assertEquals(1, findings.warnings().size());
    Finding step = findings.warnings().get(0);
    assertEquals("step-at-doorway", step.code());
    assertEquals("#/rooms/0/openings/0", step.place().toString());
    assertEquals(0.001, ((Amount) step.values().get("height")).si(), 1e-9);
  }

  /** A threshold in the wall between the second and the last room belongs to the nearer one. */
  @Test
  void fixedHeightCountsForItsRoom() {
    FixedHeight fixed = new FixedHeight(8.35, 2, 0.015, HeightOf.POUR, null);
    FoundTarget each =
        find(highs(SharingTest::stairs), TargetShape.LEVEL, Sharing.EACH, false, fixed);
    assertEquals(0.004, each.plane(1).elevation(), 1e-9);
    assertEquals(0.014, each.plane(2).elevation(), 1e-9);
    assertEquals(BoundKind.FIXED, each.groups().get(2).boundBy().get(0).kind());
  }

  @Test
  void farFixedHeightIsOdd() {
    FixedHeight fixed = new FixedHeight(2, -3, 0.015, HeightOf.POUR, null);
    find(highs(SharingTest::stairs), TargetShape.LEVEL, Sharing.ONE, false, fixed);
    Finding far = findings.warnings().get(0);
    assertEquals("fixed-height-outside", far.code());
    assertEquals("#/target/fixed/0", far.place().toString());
    assertEquals(3, ((Amount) far.values().get("off")).si(), 1e-9);
  }

  /**
   * The middle room is 20 mm higher and as dear to grind as the others are to fill: every plane
   * that lies between is as cheap, and many of them tilt toward the lower end.
   */
  @Test
  void ofEquallyCheapPlanesTheLeastSteepIsTaken() {
    HighPoints highs = highs((x, y) -> x < 4.1 ? -0.03 : x < 8.3 ? 0.02 : 0);
    Limits limits = new Limits(highs, 0.003, 0.05, List.of(), 0.002, false);
    Plane plane = PlaneSearch.find(limits, RATES).orElseThrow();
    assertEquals(0, plane.slope(), 1e-8);
    assertEquals(0.013, plane.elevation(), 0.01 + 1e-6);
  }

  @Test
  void moreSharingIsNeverCheaper() {
    Random random = new Random(51);
    for (int i = 0; i < 4; i++) {
      HighPoints highs = highs(GroundFloor.humps(random));
      for (TargetShape shape : List.of(TargetShape.LEVEL, TargetShape.PLANE)) {
        double each = price(highs, find(highs, shape, Sharing.EACH, true));
        double joined = price(highs, find(highs, shape, Sharing.JOINED, true));
        double one = price(highs, find(highs, shape, Sharing.ONE, true));
        assertTrue(each <= joined * (1 + CheapestPlane.GAP), each + " over " + joined);
        assertTrue(joined <= one * (1 + CheapestPlane.GAP), joined + " over " + one);
        assertTrue(each < one);
      }
    }
  }

  private static double price(HighPoints highs, FoundTarget found) {
    double price = 0;
    for (int room = 0; room < 3; room++) {
      Plane plane = found.plane(room);
      var prisms =
          highs.floor().under(plane.elevation() - 0.003, plane.slopeX(), plane.slopeY(), room);
      price += RATES.fill() * (prisms.fillVolume() + 0.003 * prisms.area());
      price += RATES.grind() * prisms.cutVolume();
    }
    return price;
  }
}
