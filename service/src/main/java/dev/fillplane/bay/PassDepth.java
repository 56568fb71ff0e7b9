package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * How deep one pass is: what is filled after it less what passes before it filled. Those of all
 * passes add up to the pour.
 */
public final class PassDepth {

  private record Pocket(Polygon polygon, IndexedPointInAreaLocator inside) {}

  private final Depths upTo;
  private final Depths below;
  private final List<Pocket> pockets;

  private PassDepth(Depths upTo, Depths below, List<Pocket> pockets) {
    this.upTo = upTo;
    this.below = below;
    this.pockets = pockets;
  }

  /** Of the first pass. */
  static PassDepth first(Layer layer) {
    return new PassDepth(layer.upTo(), layer.upTo(), List.of());
  }

  /** Of a pass over another one. */
  static PassDepth over(Layer below, Layer layer) {
    List<Pocket> pockets =
        below.pockets().stream()
            .flatMap(List::stream)
            .map(polygon -> new Pocket(polygon, new IndexedPointInAreaLocator(polygon)))
            .toList();
    return new PassDepth(layer.upTo(), below.upTo(), pockets);
  }

  /** Depth of the pass at a position; negative where the floor stands above it. */
  public double at(double x, double y) {
    double depth = upTo.at(x, y);
    Coordinate place = new Coordinate(x, y);
    for (Pocket pocket : pockets) {
      boolean near = pocket.polygon.getEnvelopeInternal().covers(place);
      if (near && pocket.inside.locate(place) != Location.EXTERIOR) {
        return depth - Math.max(0, below.at(x, y));
      }
    }
    return depth;
  }

  /** What is poured in a part that was cut from a room. */
  Fill within(Room room, Polygon part) {
    Fill fill = upTo.within(room, part);
    double before = 0;
    for (Pocket pocket : pockets) {
      if (pocket.polygon.getEnvelopeInternal().intersects(part.getEnvelopeInternal())) {
        for (Polygon common : Overlay.common(part, pocket.polygon)) {
          before += below.within(room, common).volume();
        }
      }
    }
    return before > 0 ? new Fill(fill.area(), Math.max(0, fill.volume() - before)) : fill;
  }
}
