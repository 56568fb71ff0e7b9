package dev.fillplane.flatness;

import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/** The gaps of one measured line against what is allowed. */
public final class LineGaps {

  private LineGaps() {}

  /** Whether an edge of {@code length} spans any reading between two others. */
  public static boolean canSee(MeasuredLine line, double length) {
    return steps(line, length) > 1;
  }

  /**
   * Every hollow once, the worst by its limit first, at most 100.
   *
   * @param length of the edge, m
   * @param allowed the limit by the distance between the contacts, m; positive
   * @return places as x along the line, y 0
   */
  public static List<Gap> over(MeasuredLine line, double length, DoubleUnaryOperator allowed) {
    double[] heights = line.elevations();
    int steps = steps(line, length);
    HullGap window = new HullGap(steps + 1);
    Set<Long> seen = new TreeSet<>();
    List<Gap> found = new ArrayList<>();
    for (int first = 0; steps > 1 && first + steps < heights.length; first++) {
      Stopped.ifInterrupted();
      window.forEachHollow(
          heights,
          first,
          first + steps,
          hollow -> {
            boolean isOver =
                hollow.gap() > allowed.applyAsDouble(span(hollow, line)) + GapLimit.ROUNDING;
            if (isOver && seen.add((long) hollow.from() * heights.length + hollow.to())) {
              found.add(gap(hollow, line.spacing()));
            }
          });
    }
    return WorstGaps.of(
        found, length, gap -> gap.gap() / allowed.applyAsDouble(gap.from().distance(gap.to())));
  }

  /**
   * Counts the places of the edge, each by the hollow that is furthest over its limit.
   *
   * @param margin within which a gap of the line is known, m
   */
  public static void count(
      MeasuredLine line,
      double length,
      DoubleUnaryOperator allowed,
      double margin,
      Placements placements) {
    double[] heights = line.elevations();
    int steps = steps(line, length);
    HullGap window = new HullGap(steps + 1);
    for (int first = 0; steps > 1 && first + steps < heights.length; first++) {
      Stopped.ifInterrupted();
      double[] worst = {0, allowed.applyAsDouble(length)};
      window.forEachHollow(
          heights,
          first,
          first + steps,
          hollow -> {
            double limit = allowed.applyAsDouble(span(hollow, line));
            placements.see(hollow.gap());
            if (hollow.gap() - limit > worst[0] - worst[1]) {
              worst[0] = hollow.gap();
              worst[1] = limit;
            }
          });
      placements.add(worst[0], worst[1], margin);
    }
  }

  private static int steps(MeasuredLine line, double length) {
    return (int) Math.min(Math.floor(length / line.spacing() + 1e-9), line.elevations().length - 1);
  }

  private static double span(ProfileGap hollow, MeasuredLine line) {
    return (hollow.to() - hollow.from()) * line.spacing();
  }

  private static Gap gap(ProfileGap hollow, double spacing) {
    return new Gap(
        hollow.gap(),
        new Position(hollow.at() * spacing, 0),
        new Position(hollow.from() * spacing, 0),
        new Position(hollow.to() * spacing, 0));
  }
}
