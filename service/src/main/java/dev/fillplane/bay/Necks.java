package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Cuts a strip where it is narrower than 10 cm, as where its edge runs close to a wall: nobody lays
 * or walks such a neck, and its two ends are ribbons of their own.
 */
final class Necks {

  static final double NARROW = 0.10;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final int RECTANGLE = 5;

  /** A shorter end, as at a slanting wall, stays with its ribbon. */
  private static final double TIP = 0.3;

  private static final BufferParameters SHARP =
      new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);

  private Necks() {}

  /** The parts of a strip, in the frame of the travel, with its necks; the strip if it has none. */
  static List<Polygon> cut(Polygon strip) {
    List<Polygon> wide = strip.getNumPoints() > RECTANGLE ? wide(strip) : List.of();
    if (wide.isEmpty() || (wide.size() == 1 && level(strip, wide.get(0)).covers(strip))) {
      return List.of(strip);
    }
    List<Polygon> parts = new ArrayList<>();
    Geometry rest = strip;
    for (Polygon core : wide) {
      for (Polygon part : Overlay.common(rest, level(strip, core))) {
        if (part.intersects(core)) {
          parts.add(part);
          rest = GEOMETRY.buildGeometry(Overlay.difference(rest, part));
        }
      }
    }
    parts.addAll(Overlay.polygons(rest));
    return parts;
  }

  /** As far across the travel as the wide part reaches, and to the end where that is near. */
  private static Geometry level(Polygon strip, Polygon core) {
    Envelope all = strip.getEnvelopeInternal();
    Envelope part = core.getEnvelopeInternal();
    double half = NARROW / 2;
    boolean toRight = part.getMinY() - all.getMinY() < TIP;
    boolean toLeft = all.getMaxY() - part.getMaxY() < TIP;
    double from = toRight ? all.getMinY() - 1 : part.getMinY() - half;
    double to = toLeft ? all.getMaxY() + 1 : part.getMaxY() + half;
    return GEOMETRY.toGeometry(new Envelope(all.getMinX() - 1, all.getMaxX() + 1, from, to));
  }

  /** Whether a strip is a neck all over. */
  static boolean isNeck(Polygon strip) {
    Envelope box = strip.getEnvelopeInternal();
    if (Math.min(box.getWidth(), box.getHeight()) < NARROW) {
      return true;
    }
    return strip.getNumPoints() > RECTANGLE && wide(strip).isEmpty();
  }

  private static List<Polygon> wide(Polygon strip) {
    return Overlay.polygons(BufferOp.bufferOp(strip, -NARROW / 2, SHARP));
  }
}
