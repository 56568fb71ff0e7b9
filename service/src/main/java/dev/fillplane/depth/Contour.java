package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;
import java.util.List;

/** All lines of one depth, inside the rooms. On the wire a GeoJSON feature. */
public record Contour(@Measured(Dimension.HEIGHT) double depth, List<List<Position>> lines) {

  /** Copies the lines. */
  public Contour {
    lines = lines.stream().map(List::copyOf).toList();
  }
}
