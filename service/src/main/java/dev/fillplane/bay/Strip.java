package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * One ribbon of a bay before anybody pours it.
 *
 * @param order its place in the pour of the bay, from 1
 * @param polygon its part of the floor, on plan; never changed
 * @param fill what is poured in it; may be nothing
 * @param from its right end, across the travel
 * @param to its left end; larger
 * @param fronts where strips that are poured later touch it, by their order
 */
public record Strip(
    int order, Polygon polygon, Fill fill, double from, double to, List<Front> fronts) {

  /** Copies the fronts. */
  public Strip {
    fronts = List.copyOf(fronts);
  }

  /** From one end to the other, across the travel. */
  public double length() {
    return to - from;
  }

  /** Orders of the strips that are poured later and touch this one, each once. */
  public List<Integer> laterNeighbours() {
    return fronts.stream().map(Front::later).distinct().toList();
  }

  /** Its edge, the outer ring anticlockwise, islands clockwise. */
  public Outline outline() {
    List<List<Position>> rings = new ArrayList<>();
    rings.add(ring(polygon.getExteriorRing(), true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(ring(polygon.getInteriorRingN(i), false));
    }
    return new Outline(rings);
  }

  private static List<Position> ring(LinearRing ring, boolean anticlockwise) {
    Coordinate[] coordinates = ring.getCoordinates();
    boolean turn = Orientation.isCCW(coordinates) != anticlockwise;
    LinearRing turned = turn ? ring.reverse() : ring;
    return Arrays.stream(turned.getCoordinates()).map(Travel::position).toList();
  }
}
