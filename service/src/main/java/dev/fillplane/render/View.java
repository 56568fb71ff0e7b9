package dev.fillplane.render;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Where the plan lies on the picture.
 *
 * @param extent the rooms on plan, m
 * @param scale px in a metre
 * @param left px of the western end of the extent
 * @param top px of its northern end
 */
record View(Envelope extent, double scale, double left, double top) {

  double x(double planX) {
    return left + (planX - extent.getMinX()) * scale;
  }

  double y(double planY) {
    return top + (extent.getMaxY() - planY) * scale;
  }

  Coordinate at(double planX, double planY) {
    return new Coordinate(x(planX), y(planY));
  }

  /** The position on plan of a place on the picture. */
  Coordinate onPlan(double x, double y) {
    return new Coordinate(
        extent.getMinX() + (x - left) / scale, extent.getMaxY() - (y - top) / scale);
  }

  double width() {
    return extent.getWidth() * scale;
  }

  double height() {
    return extent.getHeight() * scale;
  }

  /** What is drawn of the plan and {@code around} it, in px. */
  Envelope box(double around) {
    return new Envelope(
        left - around, left + width() + around, top - around, top + height() + around);
  }
}
