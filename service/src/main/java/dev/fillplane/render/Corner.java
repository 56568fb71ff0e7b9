package dev.fillplane.render;

import dev.fillplane.room.Outline;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;

/** Says in words where in a room something lies, as seen on the map. */
final class Corner {

  private static final double THIRD = 1.0 / 3;

  private Corner() {}

  /** Where {@code part} lies in the box of {@code room}, by thirds. */
  static String of(Outline room, Outline part) {
    Envelope box = room.polygon().getEnvelopeInternal();
    Point middle = part.polygon().getCentroid();
    String across = third(middle.getX() - box.getMinX(), box.getWidth(), "left", "right");
    String down = third(box.getMaxY() - middle.getY(), box.getHeight(), "top", "bottom");
    if (across.isEmpty() && down.isEmpty()) {
      return "in the middle";
    }
    return down.isEmpty() ? across : across.isEmpty() ? down : down + " " + across;
  }

  private static String third(double along, double whole, String first, String last) {
    double share = whole > 0 ? along / whole : 0.5;
    return share < THIRD ? first : share > 1 - THIRD ? last : "";
  }
}
