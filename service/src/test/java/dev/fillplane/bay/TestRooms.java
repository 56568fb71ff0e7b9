package dev.fillplane.bay;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Invented rooms, told in few numbers. */
public final class TestRooms {

  /** A ribbon rule for 15 L batches. */
  public static final RibbonRule BUCKETS = RibbonRule.byHand(0.015);

  private TestRooms() {}

  /** 6 by 4 m, its exit near the south-west corner of a short wall. */
  public static Room hall() {
    return room("hall", rectangle(0, 0, 6, 4), exit(0, 1, 0, 2));
  }

  /** 6 by 6 m without its north-east quarter, the exit at the end of the east leg. */
  public static Room ell() {
    return room("ell", "0 0, 6 0, 6 3, 3 3, 3 6, 0 6", exit(6, 1, 6, 2));
  }

  /** Two legs of 6 by 2 m and a base of 2 by 5 m, the exit at the end of the south leg. */
  public static Room horseshoe() {
    return room("horseshoe", "0 0, 6 0, 6 2, 2 2, 2 3, 6 3, 6 5, 0 5", exit(6, 0.5, 6, 1.5));
  }

  /** The hall with a column of 0.5 by 0.6 m. */
  public static Room hallWithColumn() {
    Outline around = outline(rectangle(0, 0, 6, 4));
    Outline column = outline("3 2, 3 2.6, 3.5 2.6, 3.5 2");
    return room(
        "hall",
        new Outline(List.of(around.rings().get(0), column.rings().get(0))),
        exit(0, 1, 0, 2));
  }

  /** 8 by 1.2 m, the exit at a short side. */
  public static Room passage() {
    return room("passage", rectangle(0, 0, 8, 1.2), exit(8, 0.2, 8, 1.0));
  }

  public static String rectangle(double x, double y, double width, double height) {
    return x
        + " "
        + y
        + ","
        + (x + width)
        + " "
        + y
        + ","
        + (x + width)
        + " "
        + (y + height)
        + ","
        + x
        + " "
        + (y + height);
  }

  public static Room room(String id, String corners, Opening... openings) {
    return room(id, outline(corners), openings);
  }

  private static Room room(String id, Outline outline, Opening... openings) {
    return new Room(id, outline, Optional.empty(), null, OptionalInt.empty(), List.of(openings));
  }

  public static Opening exit(double x1, double y1, double x2, double y2) {
    return opening("exit", OpeningKind.EXIT, Optional.empty(), x1, y1, x2, y2);
  }

  public static Opening doorway(String into, double x1, double y1, double x2, double y2) {
    return opening("to-" + into, OpeningKind.DOORWAY, Optional.of(into), x1, y1, x2, y2);
  }

  private static Opening opening(String id, OpeningKind kind, Optional<String> into, double... c) {
    return new Opening(id, new Position(c[0], c[1]), new Position(c[2], c[3]), kind, into);
  }

  private static Outline outline(String corners) {
    List<Position> ring = new ArrayList<>();
    for (String corner : corners.split(",")) {
      String[] xy = corner.trim().split(" ");
      ring.add(new Position(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
    }
    ring.add(ring.get(0));
    return new Outline(List.of(ring));
  }
}
