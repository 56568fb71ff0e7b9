package dev.fillplane.room;

import static dev.fillplane.room.RoomBuilder.box;
import static dev.fillplane.room.RoomBuilder.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.quantity.Amount;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Every finding about rooms at its place. */
class RoomCheckTest {

  private static void check(String findings, RoomBuilder... rooms) {
    assertEquals(
        "[" + findings + "]",
        RoomBuilder.findings(rooms).stream()
            .map(one -> one.code() + " " + one.place())
            .toList()
            .toString());
  }

  private static Map<String, Object> values(RoomBuilder... rooms) {
    return RoomBuilder.findings(rooms).get(0).values();
  }

  private static double si(Object amount) {
    return ((Amount) amount).si();
  }

  /** 6 m by 4 m with a way out. */
  private static RoomBuilder hall() {
    return rectangle("hall", 0, 0, 6, 4).exit("yard", 2, 0, 2.9, 0);
  }

  private static RoomBuilder shape(double... outer) {
    return new RoomBuilder("hall", outer).exit("yard", 0, 0, 1, 0);
  }

  @Test
  void nothingIsWrong() {
    check("", hall().ring(box(1, 1, 1, 1)).ring(box(3, 1, 0.01, 0.01)));
    check("", hall().doorway("store", "door", 6, 1, 6, 1.9), rectangle("store", 6, 0, 2, 4));
  }

  @Test
  void idTwice() {
    check("room-repeated #/rooms/1/id", hall(), rectangle("hall", 10, 0, 1, 1));
  }

  @Test
  void ringNotClosed() {
    check("ring-not-closed #/rooms/0/outline/coordinates/0", shape(0, 0, 6, 0, 6, 4, 0, 4));
  }

  @Test
  void ringTooShort() {
    check("ring-too-short #/rooms/0/outline/coordinates/0", shape(0, 0, 6, 0, 0, 0));
    check("ring-too-short #/rooms/0/outline/coordinates/1", hall().ring(1, 1, 2, 2, 1, 1));
  }

  @Test
  void outlineTooFar() {
    check(
        "outline-too-far #/rooms/0/outline/coordinates/0/2",
        shape(0, 0, 6, 0, 6, 1.1e7, 0, 4, 0, 0));
    check(
        "outline-too-far #/rooms/0/outline/coordinates/0/2",
        shape(0, 0, 6, 0, Double.NaN, 4, 0, 4, 0, 0));
  }

  @Test
  void outlineCrossesItself() {
    RoomBuilder bow = shape(0, 0, 6, 0, 0, 4, 6, 4, 0, 0);
    check("outline-crosses-itself #/rooms/0/outline/coordinates/0", bow);
    assertEquals(3, si(values(bow).get("x")), 1e-12);
    assertEquals(2, si(values(bow).get("y")), 1e-12);
    check(
        "outline-crosses-itself #/rooms/0/outline/coordinates/1",
        hall().ring(1, 1, 2, 1, 1, 2, 2, 2, 1, 1));
  }

  @Test
  void outlineRunsBackOnItself() {
    check(
        "outline-crosses-itself #/rooms/0/outline/coordinates/0",
        shape(0, 0, 6, 0, 6, 4, 6, 6, 6, 4, 0, 4, 0, 0));
  }

  @Test
  void outlineTooSmall() {
    check("outline-too-small #/rooms/0/outline/coordinates/0", shape(0, 0, 6, 0, 3, 0, 0, 0));
    check("outline-too-small #/rooms/0/outline/coordinates/0", shape(box(0, 0, 1, 0.009)));
    check("", shape(box(0, 0, 1, 0.011)));
    check("island-too-small #/rooms/0/outline/coordinates/1", hall().ring(1, 1, 2, 1, 3, 1, 1, 1));
  }

  @Test
  void islandOutside() {
    check("island-outside #/rooms/0/outline/coordinates/1", hall().ring(box(7, 1, 1, 1)));
    check("island-outside #/rooms/0/outline/coordinates/1", hall().ring(box(6, 1, 1, 1)));
  }

  @Test
  void islandCrossesOutline() {
    String at = "island-crosses-outline #/rooms/0/outline/coordinates/1";
    check(at, hall().ring(box(5.5, 1, 1, 1)));
    check(at, hall().ring(box(5, 1, 1, 1)));
  }

  @Test
  void islandTouchingInOnePointIsFine() {
    check("", hall().ring(6, 1, 5.5, 1.5, 5, 1, 5.5, 0.5, 6, 1));
  }

  @Test
  void islandsOverlap() {
    String at = "islands-overlap #/rooms/0/outline/coordinates/2";
    check(at, hall().ring(box(1, 1, 1, 1)).ring(box(1.5, 1.5, 1, 1)));
    check(at, hall().ring(box(1, 1, 1, 1)).ring(box(2, 1, 1, 1)));
    check(at, hall().ring(box(1, 1, 2, 2)).ring(box(1.5, 1.5, 1, 1)));
  }

  /** Also when it starts elsewhere and goes the other way round. */
  @Test
  void ringRepeated() {
    check(
        "ring-repeated #/rooms/0/outline/coordinates/2",
        hall().ring(box(1, 1, 1, 1)).ring(2, 2, 2, 1, 1, 1, 1, 2, 2, 2));
    check("ring-repeated #/rooms/0/outline/coordinates/1", hall().ring(box(0, 0, 6, 4)));
  }

  /** An island that touches two walls cuts the floor in two. */
  @Test
  void floorFallsApart() {
    check(
        "floor-falls-apart #/rooms/0/outline/coordinates",
        hall().ring(3, 0, 3.5, 2, 3, 4, 2.5, 2, 3, 0));
  }

  @Test
  void roomsOverlap() {
    RoomBuilder store = rectangle("store", 5.9, 0, 2, 4);
    check("rooms-overlap #/rooms/1/outline", hall(), store);
    Map<String, Object> values = values(hall(), store);
    assertEquals("store hall", values.get("room") + " " + values.get("other"));
    assertEquals(0.4, si(values.get("area")), 1e-9);
    check("rooms-overlap #/rooms/1/outline", hall(), rectangle("within", 1, 1, 1, 1));
    check("", hall(), rectangle("store", 5.9998, 0, 2, 4));
    check("", hall().ring(box(1, 1, 1, 1)), rectangle("within", 1, 1, 1, 1));
  }

  @Test
  void openingOffTheOutline() {
    RoomBuilder room = hall().exit("gate", 0.011, 1, -0.009, 2);
    check("opening-off-outline #/rooms/0/openings/1/from", room);
    assertEquals(0.011, si(values(room).get("off")), 1e-12);
    check("opening-off-outline #/rooms/0/openings/1/to", hall().exit("gate", 0, 1, -0.02, 2));
  }

  @Test
  void openingWithoutWidth() {
    check("opening-without-width #/rooms/0/openings/1", hall().exit("slit", 0, 1, 0, 1.0005));
  }

  @Test
  void openingIdTwice() {
    check("opening-repeated #/rooms/0/openings/1/id", hall().exit("yard", 0, 1, 0, 2));
  }

  @Test
  void openingIdsMayComeAgainInAnotherRoom() {
    check("", hall(), rectangle("store", 6, 0, 2, 4).exit("yard", 8, 1, 8, 2));
  }

  @Test
  void doorwayMustLeadSomewhere() {
    check("doorway-without-room #/rooms/0/openings/1", hall().doorway(null, "door", 6, 1, 6, 2));
    check(
        "doorway-into-unknown-room #/rooms/0/openings/1/into",
        hall().doorway("attic", "door", 6, 1, 6, 2));
    check(
        "doorway-into-itself #/rooms/0/openings/1/into",
        hall().doorway("hall", "door", 6, 1, 6, 2));
  }

  /** Odd, but a plan can be made. */
  @Test
  void warnings() {
    RoomBuilder bare = rectangle("hall", 0, 0, 6, 4).doorway(null, "door", 6, 1, 6, 2);
    check("doorway-without-room #/rooms/0/openings/0", bare);
    assertTrue(RoomBuilder.findings(bare).stream().noneMatch(Finding::error));
    check("", rectangle("store", 6, 0, 2, 4), hall());
  }

  /** Errors of one part do not hide those of another. */
  @Test
  void everythingAtOnce() {
    check(
        "ring-not-closed #/rooms/0/outline/coordinates/0,"
            + " outline-crosses-itself #/rooms/0/outline/coordinates/1,"
            + " outline-too-small #/rooms/1/outline/coordinates/0,"
            + " opening-without-width #/rooms/1/openings/0",
        shape(0, 0, 6, 0, 6, 4, 0, 4).ring(1, 1, 2, 1, 1, 2, 2, 2, 1, 1),
        rectangle("slot", 9, 0, 1, 0.001).exit("out", 9, 0, 9, 0));
  }
}
