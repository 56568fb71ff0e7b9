package dev.fillplane.pour;

import dev.fillplane.bay.Front;
import java.util.ArrayList;
import java.util.List;

/**
 * The ages of wet edges when they are met, point by point: along a front both strips are steps of
 * batches, so the age is constant between their seams.
 */
final class EdgeAges {

  /** Bits of a front that are shorter close anyway, and may stem from rounding. */
  private static final double SHORT = 0.01;

  private final List<LaidStrip> strips;
  private final BatchTimes times;

  EdgeAges(List<LaidStrip> strips, BatchTimes times) {
    this.strips = strips;
    this.times = times;
  }

  /** Age of the oldest edge of a strip when it is met; 0 where nothing meets it. */
  double oldest(LaidStrip strip) {
    double oldest = ofJoins(strip);
    for (Front front : strip.strip().fronts()) {
      oldest = Math.max(oldest, ofFront(strip, front));
    }
    return oldest;
  }

  private double ofJoins(LaidStrip strip) {
    double oldest = 0;
    for (int next = strip.first() + 1; strip.poured() && next <= strip.last(); next++) {
      oldest = Math.max(oldest, times.placed(next) - times.firstWater(next - 1));
    }
    return oldest;
  }

  private double ofFront(LaidStrip strip, Front front) {
    LaidStrip later = strips.get(front.later() - 1);
    if (!strip.poured() || !later.poured()) {
      return 0;
    }
    double oldest = 0;
    List<Double> ends = ends(strip, later, front);
    for (int i = 1; i < ends.size(); i++) {
      double from = ends.get(i - 1);
      double to = ends.get(i);
      if (to - from > Math.min(SHORT, front.length() / 4)) {
        int met = later.batchAt((from + to) / 2);
        int made = strip.batchAt((from + to) / 2);
        oldest = Math.max(oldest, times.placed(met) - times.firstWater(made));
      }
    }
    return oldest;
  }

  private static List<Double> ends(LaidStrip strip, LaidStrip later, Front front) {
    List<Double> ends = new ArrayList<>(List.of(front.from(), front.to()));
    ends.addAll(strip.seams());
    ends.addAll(later.seams());
    ends.removeIf(end -> end < front.from() || end > front.to());
    ends.sort(null);
    return ends;
  }
}
