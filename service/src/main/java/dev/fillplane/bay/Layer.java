package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * One pass over the floor, poured before that above it: a lift, or the deep pockets of the only
 * lift.
 *
 * @param lift its number, from the bottom, from 1
 * @param upTo what is filled once this pass is poured, with all that lies below it
 * @param pockets the parts of each room that it covers, within those of the layer above; empty for
 *     the last pass, which covers whole rooms
 */
public record Layer(int lift, Depths upTo, List<List<Polygon>> pockets) {

  /** Copies the lists. */
  public Layer {
    pockets = pockets.stream().map(List::copyOf).toList();
  }

  /** A single pass over whole rooms. */
  public static Layer whole(Depths depths) {
    return new Layer(1, depths, List.of());
  }

  /** Whether it covers whole rooms. */
  boolean isLast() {
    return pockets.isEmpty();
  }
}
