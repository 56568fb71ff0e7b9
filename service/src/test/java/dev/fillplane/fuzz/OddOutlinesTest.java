package dev.fillplane.fuzz;

import static dev.fillplane.fuzz.OddCase.answered;
import static dev.fillplane.fuzz.OddCase.refused;
import static dev.fillplane.fuzz.OddFloor.at;
import static dev.fillplane.fuzz.OddFloor.room;
import static dev.fillplane.fuzz.Rings.box;
import static dev.fillplane.fuzz.Rings.comb;
import static dev.fillplane.fuzz.Rings.open;
import static dev.fillplane.fuzz.Rings.polygon;
import static dev.fillplane.fuzz.Rings.ring;
import static dev.fillplane.fuzz.Rings.round;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Outlines that are no rooms, or hardly. */
class OddOutlinesTest {

  private static final String COORDINATES = "#/rooms/0/outline/coordinates";
  private static final String SHELL = COORDINATES + "/0";
  private static final String ISLAND = COORDINATES + "/1";
  private static final String ROOM = box(0, 0, 6, 4);

  @TestFactory
  Stream<DynamicTest> shells() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            refused("no area", room(polygon(ring(0, 0, 4, 0, 2, 0))), "outline-too-small", SHELL),
            refused("one place", room(polygon(ring(1, 1, 1, 1, 1, 1))), "outline-too-small", SHELL),
            refused("a speck", room(polygon(box(1, 1, 1.05, 1.05))), "outline-too-small", SHELL),
            refused(
                "sliver 1e-9 wide",
                room(polygon(box(0, 1, 6, 1 + 1e-9))),
                "outline-too-small",
                SHELL),
            refused(
                "sliver 2 mm wide",
                room(polygon(box(0, 1, 6, 1.002))),
                "readings-on-a-line",
                "#/survey"),
            answered("sliver 60 mm wide, read beside it", besides(box(0, 1, 6, 1.06))),
            refused(
                "bow-tie",
                room(polygon(ring(0, 0, 6, 4, 6, 0, 0, 4))),
                "outline-crosses-itself",
                SHELL),
            refused(
                "spike",
                room(polygon(ring(0, 0, 6, 0, 6, 2, 9, 2, 6, 2, 6, 4, 0, 4))),
                "outline-crosses-itself",
                SHELL),
            refused(
                "touches itself",
                room(polygon(ring(0, 0, 6, 0, 6, 4, 3, 0, 0, 4))),
                "outline-crosses-itself",
                SHELL),
            refused(
                "goes round twice",
                room(polygon(ring(0, 0, 6, 0, 6, 4, 0, 4, 0, 0, 6, 0, 6, 4, 0, 4))),
                "outline-crosses-itself",
                SHELL),
            refused(
                "not closed",
                room(polygon(open(0, 0, 6, 0, 6, 4, 0, 4))),
                "ring-not-closed",
                SHELL),
            answered("clockwise", room(polygon(ring(0, 0, 0, 4, 6, 4, 6, 0)))),
            answered(
                "repeated positions",
                room(polygon(ring(0, 0, 0, 0, 6, 0, 6, 0, 6, 4, 0, 4, 0, 4)))),
            answered(
                "positions 1e-12 apart",
                room(polygon(ring(0, 0, 1e-12, 0, 6, 0, 6, 1e-12, 6, 4, 0, 4, 0, 4 - 1e-12)))),
            answered("many positions on a line", room(polygon(onALine(400)))),
            answered(
                "a corner of almost no angle",
                room(polygon(ring(0, 0, 6, 0, 6, 4, 5.999999, 0.1)))),
            answered("slanting tip", room(polygon(ring(0, 1.572, 9.906, 1.572, 0, 3.096)))),
            answered("star", room(polygon(round(3, 2, 64, i -> i % 2 == 0 ? 2 : 0.6)))),
            answered("circle of 1,999 corners", room(polygon(round(3, 2, 1_999, i -> 1.9)))),
            answered("comb of 200 teeth", room(polygon(comb(200, 0.015, 4)))),
            refused(
                "100,000 corners",
                room(polygon(round(3, 2, 100_000, i -> 1.9))),
                "too-many",
                SHELL),
            answered(
                "1e7 away", at(9.9e6, -9.9e6, polygon(box(9.9e6, -9.9e6, 9.9e6 + 6, 4 - 9.9e6)))),
            refused(
                "1e9 away",
                at(1e9, 1e9, polygon(box(1e9, 1e9, 1e9 + 6, 1e9 + 4))),
                "outline-too-far",
                SHELL + "/0"),
            refused("a town", room(polygon(box(0, 0, 3e3, 3e3))), "out-of-range", "#/rooms")));
  }

  @TestFactory
  Stream<DynamicTest> islands() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            answered("touches the wall in a place", room(polygon(ROOM, ring(0, 2, 1, 1, 1, 3)))),
            refused(
                "along the wall",
                room(polygon(ROOM, box(0, 1, 1, 3))),
                "island-crosses-outline",
                ISLAND),
            refused("the whole room", room(polygon(ROOM, ROOM)), "ring-repeated", ISLAND),
            refused("outside", room(polygon(ROOM, box(8, 0, 9, 1))), "island-outside", ISLAND),
            refused(
                "across the wall",
                room(polygon(ROOM, box(5, 1, 7, 2))),
                "island-crosses-outline",
                ISLAND),
            refused(
                "round the room",
                room(polygon(ROOM, box(-1, -1, 7, 5))),
                "island-crosses-outline",
                ISLAND),
            refused(
                "twice the same",
                room(polygon(ROOM, box(2, 1, 3, 2), box(2, 1, 3, 2))),
                "ring-repeated",
                COORDINATES + "/2"),
            refused(
                "one in another",
                room(polygon(ROOM, box(2, 1, 4, 3), box(2.5, 1.5, 3, 2))),
                "islands-overlap",
                COORDINATES + "/2"),
            refused(
                "of no area",
                room(polygon(ROOM, ring(2, 1, 3, 1, 2.5, 1))),
                "island-too-small",
                ISLAND),
            refused(
                "bow-tie",
                room(polygon(ROOM, ring(2, 1, 3, 2, 3, 1, 2, 2))),
                "outline-crosses-itself",
                ISLAND),
            answered("almost the whole room", room(polygon(ROOM, box(0.05, 0.05, 5.95, 3.95)))),
            answered("a wall that leaves a gap", room(polygon(ROOM, box(2.9, 0.001, 3.1, 3.999)))),
            refused(
                "cuts the room in two",
                room(polygon(ROOM, ring(3, 0, 3.2, 2, 3, 4, 2.8, 2))),
                "floor-falls-apart",
                COORDINATES),
            answered("199 columns", room(polygon(columns(199)))),
            refused("200 columns", room(polygon(columns(200))), "too-many", COORDINATES)));
  }

  @TestFactory
  Stream<DynamicTest> severalRooms() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            answered("overlap by a hair", with(box(6 - 1e-5, 0, 9, 4))),
            answered("a hair apart", with(box(6 + 1e-5, 0, 9, 4))),
            answered("share a wall", with(box(6, 0, 9, 4))),
            answered("meet in a corner", with(box(6, 4, 9, 6))),
            refused("overlap", with(box(5.9, 0, 9, 4)), "rooms-overlap", "#/rooms/1/outline"),
            refused("the same twice", with(ROOM), "rooms-overlap", "#/rooms/1/outline"),
            refused("one in another", with(box(1, 1, 2, 2)), "rooms-overlap", "#/rooms/1/outline"),
            answered("one in the island of another", inTheIsland()),
            answered("a hundred metres apart", with(box(100, 0, 103, 3))),
            refused(
                "a kilometre apart", with(box(1e3, 0, 1e3 + 3, 3)), "too-many-lifts", "#/material"),
            refused(
                "a hundred kilometres apart",
                with(box(1e5, 0, 1e5 + 3, 3)),
                "too-many-batches",
                "#/crew/bagsPerBatch"),
            answered("200 closets", closets(200)),
            refused("201 closets", closets(201), "too-many", "#/rooms"),
            refused("5,000 rooms", closets(5_000), "too-many", "#/rooms")));
  }

  private static ObjectNode with(String second) {
    return OddFloor.add(room(polygon(ROOM)), "b", polygon(second));
  }

  private static ObjectNode inTheIsland() {
    return OddFloor.add(room(polygon(ROOM, box(1, 1, 4, 3))), "b", polygon(box(1, 1, 4, 3)));
  }

  private static ObjectNode closets(int count) {
    ObjectNode request = room(polygon(box(0, 0, 0.4, 0.4)));
    for (int i = 1; i < count; i++) {
      double x = 0.5 * (i % 15);
      double y = 0.5 * (i / 15);
      OddFloor.add(request, "closet " + i, polygon(box(x, y, x + 0.4, y + 0.4)));
    }
    return request;
  }

  /** Read a few millimetres to the left and the right of its middle. */
  private static ObjectNode besides(String sliver) {
    ObjectNode request = room(polygon(sliver));
    OddFloor.reading(request, 1, 1.01, -3);
    OddFloor.reading(request, 3, 1.05, -5);
    return request;
  }

  private static String onALine(int count) {
    double[] corners = new double[2 * (count + 2)];
    for (int i = 0; i < count; i++) {
      corners[2 * i] = 6.0 * i / (count - 1);
    }
    corners[2 * count] = 6;
    corners[2 * count + 1] = 4;
    corners[2 * count + 3] = 4;
    return ring(corners);
  }

  private static String[] columns(int count) {
    String[] rings = new String[count + 1];
    rings[0] = ROOM;
    for (int i = 0; i < count; i++) {
      double x = 0.1 + 0.28 * (i % 20);
      double y = 0.1 + 0.36 * (i / 20);
      rings[i + 1] = box(x, y, x + 0.1, y + 0.1);
    }
    return rings;
  }
}
