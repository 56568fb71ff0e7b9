package dev.fillplane.target;

import dev.fillplane.finding.Stopped;
import dev.fillplane.surface.FloorCutter;
import dev.fillplane.surface.PlaneCut;

/**
 * The cheapest level. Where the floor may be ground its price has no slope where the share of the
 * floor that is ground is that of filling in the sum of both prices: the level over that quantile
 * of the floor by area, found between brackets by Newton steps or halving. Of several such the
 * highest, which grinds least.
 */
final class LevelSearch {

  /** Heights nearer than this are one. */
  private static final double EXACT = 1e-10;

  /** Shares of the floor nearer than this are one. */
  private static final double SAME = 1e-12;

  private static final int MOST_ROUNDS = 200;

  private LevelSearch() {}

  /** The elevation of the lowest level that keeps all lower limits. */
  static double lowest(Limits limits) {
    HighPoints highs = limits.highs();
    double lowest = highs.elevation(highs.highestOver(Plane.level(0))) + limits.clearance();
    for (Band band : limits.bands()) {
      lowest = Math.max(lowest, band.lowest());
    }
    return lowest;
  }

  /** The elevation of the highest level that keeps all upper limits; infinite without any. */
  static double highest(Limits limits) {
    return limits.bands().stream()
        .mapToDouble(Band::highest)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The cheapest level within the limits, which can be kept. */
  static double find(Limits limits, Rates rates) {
    double low = lowest(limits);
    HighPoints highs = limits.highs();
    double top = highs.elevation(highs.highestOver(Plane.level(0))) + limits.minimumDepth();
    double high = Math.max(low, Math.min(highest(limits), top));
    if (limits.grindDepth() == 0 || high - low <= EXACT) {
      return low;
    }
    FloorCutter floor = highs.floor().cutter(highs.rooms(), highs.centroid());
    double allowed = rates.fillShare() * floor.area();
    return limits.minimumDepth()
        + quantile(floor, allowed, low - limits.minimumDepth(), high - limits.minimumDepth());
  }

  /** The highest level over which no less than an area of floor stands. */
  private static double quantile(FloorCutter floor, double area, double from, double to) {
    double low = from;
    double high = to;
    if (floor.cut(high, 0, 0).area() >= area) {
      return high;
    }
    if (floor.cut(low, 0, 0).area() < area) {
      return low;
    }
    double level = (low + high) / 2;
    for (int round = 0; round < MOST_ROUNDS && high - low > EXACT; round++) {
      Stopped.ifInterrupted();
      PlaneCut cut = floor.cut(level, 0, 0);
      double over = cut.area() - area;
      boolean tooLow = over >= -SAME * floor.area();
      low = tooLow ? level : low;
      high = tooLow ? high : level;
      double step = over / cut.edge()[0];
      if (Math.abs(step) <= EXACT) {
        return level;
      }
      boolean helps = level + step > low && level + step < high;
      level = helps ? level + step : (low + high) / 2;
    }
    return level;
  }
}
