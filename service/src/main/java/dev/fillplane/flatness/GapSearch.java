package dev.fillplane.flatness;

import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/**
 * Keeps the largest gap, and the worst of those over a limit, while rooms are walked over direction
 * by direction.
 */
final class GapSearch {

  /** Smaller gaps are rounding of a plane floor. */
  private static final double NOISE = 1e-9;

  /** So many gaps are thinned out before the walk goes on, which bounds memory. */
  private static final int MANY = 20_000;

  private final DoubleBinaryOperator elevation;
  private final double length;
  private final int steps;
  private final HullGap window;
  private final double over;
  private final double margin;
  private final Placements placements = new Placements();
  private double gap = NOISE;
  private List<Gap> listed = new ArrayList<>();
  private Optional<Gap> largest = Optional.empty();

  /** A search that lists gaps over those of {@code limit}; each is known within a margin, m. */
  GapSearch(DoubleBinaryOperator elevation, GapLimit limit, double margin) {
    this.over = limit.gap() + GapLimit.ROUNDING;
    this.margin = margin;
    this.elevation = elevation;
    this.length = limit.straightedge();
    this.steps = (int) Math.max(2, Math.round(length / Straightedge.STEP));
    this.window = new HullGap(steps + 1);
  }

  EdgeWalk result() {
    return new EdgeWalk(largest, WorstGaps.of(listed, length, Gap::gap), placements);
  }

  /** Lays the edge on every line of {@code room} that runs along u of {@code frame}. */
  void walk(Polygon room, Frame frame) {
    ScanLines scan = ScanLines.of(room, frame);
    for (double v : scan.lines(Straightedge.STEP)) {
      Stopped.ifInterrupted();
      double[] runs = scan.runs(v);
      for (int run = 0; run < runs.length; run += 2) {
        if (runs[run + 1] - runs[run] >= shortest() - 2 * ScanLines.CLEARANCE) {
          slide(frame, v, places(runs[run], runs[run + 1]));
        }
      }
    }
  }

  private double shortest() {
    return Math.min(length, Straightedge.SHORTEST);
  }

  /**
   * Samples of a run: steps of the edge in its middle, or the whole run where the edge is longer.
   */
  private double[] places(double from, double to) {
    double step = length / steps;
    if (to - from < length) {
      step = (to - from) / Math.max(2, Math.round((to - from) / step));
    }
    return ScanLines.centred(from, to, step);
  }

  private void slide(Frame frame, double v, double[] places) {
    double[] heights = new double[places.length];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = elevation.applyAsDouble(frame.x(places[i], v), frame.y(places[i], v));
    }
    int span = Math.min(steps, heights.length - 1);
    HollowBound bound = new HollowBound(heights, span);
    List<Gap> found = new ArrayList<>();
    ProfileGap last = new ProfileGap(0, 0, 0, 0);
    for (int first = 0; first + span < heights.length; first++) {
      double most = bound.from(first);
      if (most <= Math.min(gap, over) && most + margin <= over) {
        placements.addWithin();
      } else if (measure(heights, first, first + span) > Math.min(gap, over)) {
        ProfileGap met = window.result();
        if (!met.equals(last)) { // most windows show the hollow of the one before
          keep(place(met, frame, v, places), found);
        }
        last = met;
      }
    }
    listed.addAll(WorstGaps.of(found, length, Gap::gap));
    if (listed.size() > MANY) {
      listed = new ArrayList<>(WorstGaps.of(listed, length, Gap::gap));
    }
  }

  private double measure(double[] heights, int first, int last) {
    double measured = window.measure(heights, first, last);
    placements.add(measured > NOISE ? measured : 0, over - GapLimit.ROUNDING, margin);
    return measured;
  }

  private void keep(Gap met, List<Gap> found) {
    if (met.gap() > over) {
      found.add(met);
    }
    if (met.gap() > gap) {
      gap = met.gap();
      largest = Optional.of(met);
    }
  }

  private static Gap place(ProfileGap found, Frame frame, double v, double[] places) {
    Position at = frame.position(places[found.at()], v);
    Position from = frame.position(places[found.from()], v);
    Position to = frame.position(places[found.to()], v);
    return new Gap(found.gap(), at, from, to);
  }
}
