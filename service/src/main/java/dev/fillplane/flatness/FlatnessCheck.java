package dev.fillplane.flatness;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/**
 * Whether a floor is flat enough for its covering: now, and after a pour.
 *
 * <p>Now: the largest gap of the mean surface against the limit. A surface estimated from readings
 * is smoother than the floor, so the verdict stays unclear within a margin. A gap is one height
 * against the mean of two others; with independent errors of deviation s its own deviation is
 * sqrt(1.5) s, and 1.645 of those leave 5 % on one side. The margin is not added to the gap told.
 *
 * <p>After: underlayment does not find the plane alone; what is left has a standard deviation of
 * 1.0 mm where pins or rails guide it, 1.5 mm where nothing does (common practice, no source). The
 * gap told is the one that 5 % exceed, and is never zero.
 */
public final class FlatnessCheck {

  private static final double ONE_SIDED_95 = 1.645;
  private static final double OF_THREE_HEIGHTS = Math.sqrt(1.5);
  private static final double GUIDED_RESIDUAL = 1.0e-3;
  private static final double FREE_RESIDUAL = 1.5e-3;

  private FlatnessCheck() {}

  /**
   * Checks a floor.
   *
   * @param rooms valid polygons, m
   * @param elevation of the mean surface at x, y in any of the rooms, m
   * @param deviation mean standard deviation of the floor about that surface, m; not negative
   * @param limit of the covering
   * @param guided whether pins or rails will guide the pour
   */
  public static FlatnessSummary of(
      List<Polygon> rooms,
      DoubleBinaryOperator elevation,
      double deviation,
      FlatnessLimit limit,
      boolean guided) {
    EdgeWalk walk = Straightedge.walk(rooms, elevation, GapLimit.everywhere(limit), 0);
    double gap = walk.largest().map(Gap::gap).orElse(0.0);
    return new FlatnessSummary(
        before(gap, deviation, limit), limit, after(limit, guided), listed(walk, limit));
  }

  private static List<ListedGap> listed(EdgeWalk walk, FlatnessLimit limit) {
    return walk.over().stream()
        .limit(FlatnessSummary.MOST_GAPS)
        .map(gap -> ListedGap.of(gap, limit.straightedge(), limit.gap()))
        .toList();
  }

  static FloorGap before(double gap, double deviation, FlatnessLimit limit) {
    if (!(deviation >= 0)) {
      throw new IllegalArgumentException("deviation " + deviation);
    }
    double margin = margin(deviation);
    if (gap + margin < limit.gap()) {
      return new FloorGap(gap, Passes.WITHIN);
    }
    return new FloorGap(gap, gap - margin > limit.gap() ? Passes.OVER : Passes.UNCLEAR);
  }

  static FloorGap after(FlatnessLimit limit, boolean guided) {
    double gap = margin(guided ? GUIDED_RESIDUAL : FREE_RESIDUAL);
    return new FloorGap(gap, gap < limit.gap() ? Passes.WITHIN : Passes.UNCLEAR);
  }

  /** Within what a gap is known whose three heights have independent errors of a deviation, m. */
  public static double margin(double deviation) {
    return ONE_SIDED_95 * OF_THREE_HEIGHTS * deviation;
  }
}
