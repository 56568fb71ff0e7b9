package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** The depth {@code d + sx x + sy y}, with exact fills: area times depth at the centroid. */
public record TiltedDepths(double d, double sx, double sy) implements Depths {

  private static final double FAR = 1e4;

  /** The same depth everywhere. */
  public static TiltedDepths even(double depth) {
    return new TiltedDepths(depth, 0, 0);
  }

  @Override
  public double at(double x, double y) {
    return d + sx * x + sy * y;
  }

  @Override
  public Fill within(Polygon part) {
    Geometry poured = sx == 0 && sy == 0 ? part : part.intersection(belowTarget());
    if (poured.isEmpty() || sx == 0 && sy == 0 && d <= 0) {
      return new Fill(0, 0);
    }
    Point middle = poured.getCentroid();
    return new Fill(poured.getArea(), poured.getArea() * at(middle.getX(), middle.getY()));
  }

  @Override
  public Fill deeperThan(double depth) {
    throw new UnsupportedOperationException("this floor has no end");
  }

  /** This depth on a plan that is shifted, then turned about the plan origin. */
  public TiltedDepths moved(Move move) {
    double x = sx * move.cos() - sy * move.sin();
    double y = sx * move.sin() + sy * move.cos();
    return new TiltedDepths(d - sx * move.dx() - sy * move.dy(), x, y);
  }

  private Geometry belowTarget() {
    double steep = Math.hypot(sx, sy);
    double ux = sx / steep;
    double uy = sy / steep;
    Coordinate foot = new Coordinate(-d / steep * ux, -d / steep * uy);
    Coordinate[] ring = {
      at(foot, ux, uy, 0, -FAR),
      at(foot, ux, uy, FAR, -FAR),
      at(foot, ux, uy, FAR, FAR),
      at(foot, ux, uy, 0, FAR),
      at(foot, ux, uy, 0, -FAR)
    };
    return new GeometryFactory().createPolygon(ring);
  }

  private static Coordinate at(Coordinate foot, double ux, double uy, double up, double side) {
    return new Coordinate(foot.x + up * ux - side * uy, foot.y + up * uy + side * ux);
  }
}
