package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;

/**
 * A floor in steps: 8 mm to pour, 30 mm in an octagon, 10 mm more in one half as wide within it.
 * Fills are exact: areas times depths.
 *
 * @param less how much lower the target lies than it might
 */
record Bowl(double x, double y, double radius, double less) implements Depths {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double[] STEPS = {0.008, 0.022, 0.010};

  static Bowl in(Room room, Random random) {
    Envelope box = room.outline().polygon().getEnvelopeInternal();
    return new Bowl(
        box.getMinX() + random.nextDouble() * box.getWidth(),
        box.getMinY() + random.nextDouble() * box.getHeight(),
        0.5 + 2 * random.nextDouble(),
        0);
  }

  /** Octagons round the middle; the first is as good as endless. */
  private static Polygon step(Bowl bowl, int number) {
    double radius = number == 0 ? 1e3 : bowl.radius / number;
    return (Polygon) GEOMETRY.createPoint(new Coordinate(bowl.x, bowl.y)).buffer(radius, 2);
  }

  @Override
  public double at(double atX, double atY) {
    double depth = -less;
    for (int step = 0; step < STEPS.length; step++) {
      boolean inside = step(this, step).covers(GEOMETRY.createPoint(new Coordinate(atX, atY)));
      depth += inside ? STEPS[step] : 0;
    }
    return depth;
  }

  @Override
  public Fill within(Polygon part) {
    double area = 0;
    double volume = 0;
    double depth = -less;
    for (int step = 0; step < STEPS.length; step++) {
      double before = Math.max(0, depth);
      depth += STEPS[step];
      double common = part.intersection(step(this, step)).getArea();
      volume += common * Math.max(0, depth - before);
      area = area == 0 && depth > 0 ? common : area;
    }
    return new Fill(area, volume);
  }

  @Override
  public Fill deeperThan(double depth) {
    throw new UnsupportedOperationException();
  }

  /** Lifts, the highest first told, as deep as {@code thicknesses}; the lowest takes the rest. */
  List<Layer> layers(Room room, double... thicknesses) {
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer(thicknesses.length + 1, this, List.of()));
    double above = 0;
    for (int i = 0; i < thicknesses.length; i++) {
      above += thicknesses[i];
      Bowl lower = new Bowl(x, y, radius, above);
      layers.add(
          0,
          new Layer(thicknesses.length - i, lower, List.of(lower.deep(room.outline().polygon()))));
    }
    return layers;
  }

  @SuppressWarnings("unchecked")
  private List<Polygon> deep(Polygon room) {
    double depth = -less;
    for (int step = 0; step < STEPS.length; step++) {
      depth += STEPS[step];
      if (depth > 0) {
        Geometry common = room.intersection(step(this, step));
        return (List<Polygon>) PolygonExtracter.getPolygons(common);
      }
    }
    return List.of();
  }
}
