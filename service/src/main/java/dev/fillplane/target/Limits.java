package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What limits a target.
 *
 * @param minimumDepth over every high point
 * @param ceilings heights of the pour that must not be passed, in the order of the request
 * @param maximumSlope not negative
 * @param centroid of the rooms
 */
record Limits(
    HighPoints highs,
    double minimumDepth,
    List<Cap> ceilings,
    double maximumSlope,
    Position centroid) {

  /** Heights nearer than this count as equal: a hundredth of what a reading can tell. */
  static final double TOUCH = 1e-6;

  /** A ceiling as a height of the pour, with its number in the request. */
  record Cap(int index, double x, double y, double elevation) {}

  static Limits of(
      TargetWish wish,
      double minimumDepth,
      HighPoints highs,
      OptionalDouble coveringThickness,
      Place place,
      Findings findings) {
    List<Cap> caps = new ArrayList<>();
    for (int i = 0; i < wish.ceiling().size(); i++) {
      Ceiling ceiling = wish.ceiling().get(i);
      boolean finish = ceiling.of() == HeightOf.FINISH;
      if (finish && coveringThickness.isEmpty()) {
        findings.error("covering-thickness-needed", place.at("ceiling").at(i));
      } else {
        double above = finish ? coveringThickness.getAsDouble() : 0;
        caps.add(new Cap(i, ceiling.x(), ceiling.y(), ceiling.elevation() - above));
      }
    }
    double slope = Math.max(0, wish.maximumSlope());
    return new Limits(highs, minimumDepth, List.copyOf(caps), slope, highs.floor().centroid());
  }

  /** The same without ceilings. */
  Limits open() {
    return new Limits(highs, minimumDepth, List.of(), maximumSlope, centroid);
  }
}
