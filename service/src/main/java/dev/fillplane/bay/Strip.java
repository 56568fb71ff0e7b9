package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Outline;
import java.util.List;
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

  /** Its edge. */
  public Outline outline() {
    return Outline.of(polygon);
  }
}
