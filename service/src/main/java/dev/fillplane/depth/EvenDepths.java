package dev.fillplane.depth;

import org.locationtech.jts.geom.Polygon;

/**
 * The same depth everywhere.
 *
 * @param area of the floor
 * @param depth not negative
 */
public record EvenDepths(double area, double depth) implements Depths {

  @Override
  public double at(double x, double y) {
    return depth;
  }

  @Override
  public Fill within(Polygon part) {
    return depth > 0 ? new Fill(part.getArea(), part.getArea() * depth) : new Fill(0, 0);
  }

  @Override
  public Fill deeperThan(double other) {
    double left = Math.max(0, depth - other);
    return left > 0 ? new Fill(area, area * left) : new Fill(0, 0);
  }
}
