package dev.fillplane.bay;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds how each part of the floor is left: breadth first from the exits over doorways and across
 * joints, which lead both ways. Of two ways with as many of them the shorter one counts. Parts that
 * reach no exit are left by an opening of one of them, a threshold before a doorway, or by the
 * middle of one of the long walls, whichever suits the pour best, so that it does not matter where
 * an outline begins.
 */
final class WaysOut {

  private final FloorParts floor;
  private final WayOut[] found;
  private final double[] doorDistance;

  private WaysOut(FloorParts floor) {
    this.floor = floor;
    this.found = new WayOut[floor.size()];
    this.doorDistance = new double[floor.size()];
  }

  /** The ways out in the order of the pour: farthest part first. */
  static List<WayOut> farthestFirst(FloorParts floor) {
    WaysOut search = new WaysOut(floor);
    search.fromExits();
    search.fromAssumedExits();
    return Arrays.stream(search.found)
        .sorted(
            Comparator.comparing(WayOut::known)
                .thenComparing(WayOut::doorways, Comparator.reverseOrder())
                .thenComparing(WayOut::distance, Comparator.reverseOrder()))
        .toList();
  }

  private void fromExits() {
    List<Integer> start = new ArrayList<>();
    for (int i = 0; i < floor.size(); i++) {
      List<Position> exits =
          floor.openings(i).stream()
              .filter(opening -> opening.kind() == OpeningKind.EXIT)
              .map(Opening::middle)
              .toList();
      if (!exits.isEmpty()) {
        settle(i, 0, 0, exits, true);
        start.add(i);
      }
    }
    spread(start, true);
  }

  private void fromAssumedExits() {
    for (int step = 0; step < 4; step++) {
      for (int i = 0; i < floor.size(); i++) {
        List<Position> exits = found[i] == null ? assumedExits(i, step) : List.of();
        if (!exits.isEmpty()) {
          settle(i, 0, 0, exits, false);
          spread(List.of(i), false);
        }
      }
    }
  }

  // Step by step less likely to be the way out.
  private List<Position> assumedExits(int part, int step) {
    if (step == 3) {
      return Wall.longOnes(floor.part(part).polygon()).stream().map(Wall::middle).toList();
    }
    return floor.openings(part).stream()
        .filter(o -> step != 0 || o.kind() == OpeningKind.THRESHOLD)
        .filter(o -> step != 1 || o.into().isEmpty())
        .map(Opening::middle)
        .limit(1)
        .toList();
  }

  private void spread(List<Integer> start, boolean known) {
    List<Integer> ring = start;
    for (int count = 1; !ring.isEmpty(); count++) {
      Map<Integer, Passage> next = nearest(ring);
      for (Map.Entry<Integer, Passage> entry : next.entrySet()) {
        Passage back = entry.getValue();
        settle(entry.getKey(), count, lengthVia(back), back.places(), known);
      }
      ring = List.copyOf(next.keySet());
    }
  }

  /** For each part next to the ring the passage back into it on the shortest way. */
  private Map<Integer, Passage> nearest(List<Integer> ring) {
    Map<Integer, Passage> next = new LinkedHashMap<>();
    for (int part : ring) {
      for (Passage passage : floor.passages(part)) {
        if (found[passage.to()] == null) {
          next.merge(
              passage.to(),
              new Passage(part, passage.places()),
              (a, b) -> lengthVia(b) < lengthVia(a) ? b : a);
        }
      }
    }
    return next;
  }

  private double lengthVia(Passage back) {
    List<Position> places = found[back.to()].places();
    return doorDistance[back.to()]
        + back.places().stream().mapToDouble(place -> nearest(places, place)).min().orElse(0);
  }

  private void settle(int part, int count, double length, List<Position> places, boolean known) {
    Position middle = Travel.position(floor.part(part).polygon().getCentroid().getCoordinate());
    doorDistance[part] = length;
    found[part] = new WayOut(part, count, length + nearest(places, middle), places, known);
  }

  private static double nearest(List<Position> places, Position to) {
    return places.stream().mapToDouble(to::distance).min().orElse(0);
  }
}
