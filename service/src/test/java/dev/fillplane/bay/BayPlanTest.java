package dev.fillplane.bay;

import static dev.fillplane.bay.TestRooms.BUCKETS;
import static dev.fillplane.bay.TestRooms.doorway;
import static dev.fillplane.bay.TestRooms.exit;
import static dev.fillplane.bay.TestRooms.rectangle;
import static dev.fillplane.bay.TestRooms.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.depth.Depths;
import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BayPlanTest {

  private static final Depths TEN = TiltedDepths.even(0.010);

  @Test
  void rectangleIsTravelledTowardTheExitInShortFronts() {
    Bay bay = only(TestRooms.hall(), TEN);
    assertTravel(bay, -1, 0);
    // 15 L fill 0.375 m of a front of 4 m, 10 mm deep: 6 m are 16 strips.
    assertEquals(16, bay.strips().size());
    assertEquals(4, bay.longestFront(), 1e-9);
    TileCheck.assertTiles(bay, TEN);
    assertEachMeetsTheNext(bay);
  }

  @Test
  void exitCountsMoreThanTheDeepEnd() {
    // Deep at the door, x = 0, and the other way round.
    assertTravel(only(TestRooms.hall(), new TiltedDepths(0.020, -0.003, 0)), -1, 0);
    assertTravel(only(TestRooms.hall(), new TiltedDepths(0.002, 0.003, 0)), -1, 0);
  }

  @Test
  void exitNearACornerLeavesTheShortFront() {
    Room hall = room("hall", rectangle(0, 0, 6, 4), exit(0, 0, 0.9, 0));
    assertTravel(only(hall, TEN), -1, 0);
    Room middle = room("hall", rectangle(0, 0, 6, 4), exit(2.5, 0, 3.4, 0));
    assertTravel(only(middle, TEN), 0, -1);
  }

  @Test
  void nookBesideTheExitIsPouredBeforeItIsCutOff() {
    // A pier of 0.5 m in the wall with the exit cuts the last strip in two.
    String corners = "0 0, 6 0, 6 4, 0 4, 0 2.6, 0.5 2.6, 0.5 2, 0 2";
    Bay bay = only(room("hall", corners, exit(0, 1, 0, 2)), TEN);
    assertTravel(bay, -1, 0);
    TileCheck.assertTiles(bay, TEN);
    int last = bay.strips().size();
    // The nook north of the pier comes before the strip that leads round the pier.
    Strip nook = bay.strips().get(last - 3);
    assertTrue(nook.polygon().getEnvelopeInternal().getMinY() > 2.6 - 1e-6);
    assertEquals(0, bay.strips().get(last - 1).polygon().getEnvelopeInternal().getMinX(), 1e-6);
    assertTrue(bay.strips().get(last - 1).polygon().getEnvelopeInternal().getMaxY() < 2 + 1e-6);
  }

  @Test
  void deepEndComesFirstWhereTheExitLeavesTheChoice() {
    Room two = room("hall", rectangle(0, 0, 6, 4), exit(0, 1, 0, 2), exit(6, 1, 6, 2));
    assertTravel(only(two, new TiltedDepths(0.020, -0.003, 0)), 1, 0);
    assertTravel(only(two, new TiltedDepths(0.002, 0.003, 0)), -1, 0);
  }

  /** Nobody tells a way out: it must not matter where the outline begins, or which way it runs. */
  @Test
  void aWayOutThatIsAssumedSuitsThePour() {
    TiltedDepths deepAtTheLeft = new TiltedDepths(0.020, -0.003, 0);
    for (String corners :
        List.of(
            "0 0, 6 0, 6 4, 0 4",
            "6 0, 6 4, 0 4, 0 0",
            "6 4, 0 4, 0 0, 6 0",
            "0 4, 6 4, 6 0, 0 0",
            "0 2, 0 0, 3 0, 6 0, 6 4, 0 4")) {
      assertTravel(only(room("hall", corners), deepAtTheLeft), 1, 0);
    }
  }

  @Test
  void stripsOfAnEllGoToTheExit() {
    Bay bay = only(TestRooms.ell(), TEN);
    assertTravel(bay, 1, 0);
    TileCheck.assertTiles(bay, TEN);
    assertEachMeetsTheNext(bay);
  }

  @Test
  void legThatLeadsAwayIsPouredFromItsEnd() {
    Bay bay = only(TestRooms.horseshoe(), TEN);
    assertTravel(bay, 1, 0);
    TileCheck.assertTiles(bay, TEN);
    Strip first = bay.strips().get(0);
    Strip last = bay.strips().get(bay.strips().size() - 1);
    assertEquals(6, first.polygon().getEnvelopeInternal().getMaxX(), 1e-6);
    assertTrue(first.polygon().getCentroid().getY() > 3);
    assertEquals(6, last.polygon().getEnvelopeInternal().getMaxX(), 1e-6);
    assertTrue(last.polygon().getCentroid().getY() < 2);
  }

  @Test
  void columnSplitsStripsAndStaysDry() {
    Bay bay = only(TestRooms.hallWithColumn(), TEN);
    assertTravel(bay, -1, 0);
    TileCheck.assertTiles(bay, TEN);
    assertEquals(24 - 0.3, bay.fill().area(), 1e-6);
    assertTrue(bay.strips().size() > 16);
    double previous = 6.01;
    for (Strip strip : bay.strips()) {
      double x = strip.polygon().getEnvelopeInternal().getMaxX();
      assertTrue(x < previous + 1e-6, "travel turns back at ribbon " + strip.order());
      previous = x;
    }
  }

  @Test
  void passageIsPouredInCrossStrips() {
    Bay bay = only(TestRooms.passage(), TEN);
    assertTravel(bay, 1, 0);
    assertEquals(1.2, bay.longestFront(), 1e-9);
    // No wider than 0.45 m: 8 m are 18 strips.
    assertEquals(18, bay.strips().size());
    TileCheck.assertTiles(bay, TEN);
  }

  @Test
  void bothEndsConvergeOnADoorInTheMiddleOfALongWall() {
    Room gallery = room("gallery", rectangle(0, 0, 12, 2), exit(5.5, 0, 6.5, 0));
    Bay bay = only(gallery, TEN);
    assertEquals(2, bay.longestFront(), 1e-9);
    Strip last = bay.strips().get(bay.strips().size() - 1);
    assertTrue(last.polygon().distance(gallery.outline().polygon().getCentroid()) < 0.5);
    TileCheck.assertTiles(bay, TEN);
  }

  @Test
  void ribbonsAreWidenedBeforeThereAreTooMany() {
    Room street = room("street", rectangle(0, 0, 300, 3), exit(300, 1, 300, 2));
    Bay bay = only(street, TEN);
    assertEquals(400, bay.strips().size());
    TileCheck.assertTiles(bay, TEN);
  }

  @Test
  void nothingIsPouredWhereTheFloorIsHigh() {
    Depths half = new TiltedDepths(-0.009, 0.003, 0);
    Bay bay = only(TestRooms.hall(), half);
    TileCheck.assertTiles(bay, half);
    assertEquals(12, bay.fill().area(), 1e-6);
    Strip last = bay.strips().get(bay.strips().size() - 1);
    assertEquals(0, last.fill().volume());
  }

  @Test
  void tilesAnyRoomAnyWayRound() {
    Random random = new Random(7);
    List<Room> rooms =
        List.of(
            TestRooms.hall(), TestRooms.ell(), TestRooms.hallWithColumn(), TestRooms.horseshoe());
    for (int i = 0; i < 40; i++) {
      Room room = rooms.get(i % rooms.size());
      TiltedDepths depths =
          new TiltedDepths(
              0.012, 0.003 * (random.nextDouble() - 0.5), 0.003 * (random.nextDouble() - 0.5));
      Move move =
          new Move(100 * random.nextDouble(), 100 * random.nextDouble(), 7 * random.nextDouble());
      Bay still = only(room, depths);
      Bay moved = only(move.of(room), depths.moved(move));
      TileCheck.assertTiles(moved, depths.moved(move));
      assertEquals(still.strips().size(), moved.strips().size());
      for (int s = 0; s < still.strips().size(); s++) {
        assertEquals(
            still.strips().get(s).fill().volume(), moved.strips().get(s).fill().volume(), 1e-8);
        assertEquals(
            still.strips().get(s).laterNeighbours(), moved.strips().get(s).laterNeighbours());
      }
    }
  }

  @Test
  void farthestRoomComesFirst() {
    // store - hall - yard, told from one side only; den beside the hall, farther from the exit.
    Room store = room("store", rectangle(6, 0, 2, 2));
    Room hall =
        room(
            "hall",
            rectangle(0, 0, 6, 4),
            exit(0, 1, 0, 2),
            doorway("store", 6, 0.5, 6, 1.4),
            doorway("den", 4, 4, 5, 4));
    Room den = room("den", rectangle(3, 4, 3, 6), doorway("hall", 4, 4, 5, 4));
    Room loft = room("loft", rectangle(8, 0, 2, 2), doorway("store", 8, 0.5, 8, 1.4));
    BayPlan plan = BayPlan.of(List.of(hall, store, den, loft), TEN, BUCKETS);
    assertEquals(
        List.of("loft", "den", "store", "hall"), plan.bays().stream().map(Bay::id).toList());
    assertTravel(plan.bays().get(0), -1, 0);
    assertTravel(plan.bays().get(1), 0, -1);
    assertEquals(
        List.of("loft to-store", "den to-hall", "store to-store"),
        plan.joints().stream().map(j -> j.bay() + " " + j.opening().orElseThrow()).toList());
    assertEquals(List.of(), warnings(plan, List.of(hall, store, den, loft)));
  }

  @Test
  void roomsWithoutWayOutAreStillPoured() {
    Room hall = TestRooms.hall();
    Room shed = room("shed", rectangle(10, 0, 2, 3));
    BayPlan plan = BayPlan.of(List.of(hall, shed), TEN, BUCKETS);
    assertEquals(List.of("shed", "hall"), plan.bays().stream().map(Bay::id).toList());
    assertEquals(List.of("room-without-way-out #/rooms/1"), warnings(plan, List.of(hall, shed)));
    assertEquals(
        List.of("no-exit #/rooms"),
        warnings(BayPlan.of(List.of(shed), TEN, BUCKETS), List.of(shed)));
  }

  @Test
  void withoutExitTheDoorwayServes() {
    Room hall = room("hall", rectangle(0, 0, 6, 4), doorway("elsewhere", 6, 1, 6, 2));
    assertTravel(only(hall, TEN), 1, 0);
  }

  private static List<String> warnings(BayPlan plan, List<Room> rooms) {
    Findings findings = new Findings();
    plan.warn(rooms, Place.root().at("rooms"), findings);
    return findings.warnings().stream().map(BayPlanTest::text).toList();
  }

  private static String text(Finding finding) {
    return finding.code() + " " + finding.place();
  }

  private static Bay only(Room room, Depths depths) {
    return BayPlan.of(List.of(room), depths, BUCKETS).bays().get(0);
  }

  private static void assertTravel(Bay bay, double x, double y) {
    assertEquals(x, bay.travel().x(), 1e-9, bay.id());
    assertEquals(y, bay.travel().y(), 1e-9, bay.id());
  }

  private static void assertEachMeetsTheNext(Bay bay) {
    for (int i = 0; i + 1 < bay.strips().size(); i++) {
      assertEquals(List.of(i + 2), bay.strips().get(i).laterNeighbours());
    }
    assertEquals(List.of(), bay.strips().get(bay.strips().size() - 1).laterNeighbours());
  }
}
