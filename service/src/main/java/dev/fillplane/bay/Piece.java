package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import org.locationtech.jts.geom.Polygon;

/**
 * A connected part of a strip, in the frame of the travel.
 *
 * @param row which strip, counted in the direction of travel from 0
 * @param shape its part of the floor
 * @param fill what is poured in it
 */
record Piece(int row, Polygon shape, Fill fill) {

  double from() {
    return shape.getEnvelopeInternal().getMinY();
  }

  double to() {
    return shape.getEnvelopeInternal().getMaxY();
  }
}
