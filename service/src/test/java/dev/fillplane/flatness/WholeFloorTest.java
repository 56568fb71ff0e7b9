package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** The straightedge over whole floors against the plain definition, and its properties. */
class WholeFloorTest {

  private static final double EDGE = 1.5;

  /** Every edge on every line: the largest depth under any chord within it, without a hull. */
  @Test
  void fastIsBruteForce() {
    for (int seed = 0; seed < 4; seed++) {
      Polygon room = room();
      DoubleBinaryOperator floor = rough(seed);
      List<Double> gaps = plainGaps(room, floor);
      double largest = gaps.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
      double limit = 0.7 * largest;
      EdgeWalk walk = Straightedge.walk(List.of(room), floor, new GapLimit(EDGE, limit, 1), 0.0001);
      assertEquals(largest, walk.places().largest(), 1e-12);
      assertEquals(largest, walk.largest().orElseThrow().gap(), 1e-12);
      double met = gaps.stream().filter(gap -> gap <= limit).count() / (double) gaps.size();
      assertEquals(met, walk.places().met(), 1e-12);
      assertTrue(met > 0.5 && met < 1, "met " + met);
    }
  }

  @Test
  void planeHasNoGap() {
    Random random = new Random(3);
    for (int i = 0; i < 20; i++) {
      double a = random.nextDouble() * 0.02 - 0.01;
      double b = random.nextDouble() * 0.02 - 0.01;
      double c = random.nextDouble() * 10;
      DoubleBinaryOperator plane = (x, y) -> a * x + b * y + c;
      EdgeWalk walk =
          Straightedge.walk(List.of(room()), plane, new GapLimit(0.5 + 0.1 * i, 0, 1), 0);
      assertEquals(0, walk.places().largest());
      assertEquals(Passes.WITHIN, walk.places().verdict(1));
    }
  }

  /** On the same samples a shorter edge finds no more; the room is wide enough for both. */
  @Test
  void shorterEdgeNeverFindsMore() throws ParseException {
    Polygon lane = (Polygon) new WKTReader().read("POLYGON((0 0,9 0,9 0.12,0 0.12,0 0))");
    for (int seed = 0; seed < 10; seed++) {
      double before = Double.POSITIVE_INFINITY;
      for (double edge : new double[] {3, 2.4, 1.8, 1.2, 0.6, 0.3}) {
        GapLimit limit = new GapLimit(edge, 1, 1);
        double gap = Straightedge.walk(List.of(lane), rough(seed), limit, 0).places().largest();
        assertTrue(gap <= before + 1e-12, edge + " m: " + gap + " after " + before);
        before = gap;
      }
    }
  }

  private static List<Double> plainGaps(Polygon room, DoubleBinaryOperator floor) {
    List<Double> gaps = new ArrayList<>();
    for (int direction = 0; direction < Straightedge.DIRECTIONS; direction++) {
      Frame frame = Frame.of(room, Math.PI * direction / Straightedge.DIRECTIONS);
      ScanLines scan = ScanLines.of(room, frame);
      for (double v : scan.lines(Straightedge.STEP)) {
        double[] runs = scan.runs(v);
        for (int run = 0; run < runs.length; run += 2) {
          gaps.addAll(plainGaps(frame, v, runs[run], runs[run + 1], floor));
        }
      }
    }
    return gaps;
  }

  private static List<Double> plainGaps(
      Frame frame, double v, double from, double to, DoubleBinaryOperator floor) {
    List<Double> gaps = new ArrayList<>();
    if (to - from < 0.498) {
      return gaps;
    }
    double step = to - from < EDGE ? (to - from) / Math.round((to - from) / 0.1) : 0.1;
    double[] places = ScanLines.centred(from, to, step);
    int span = Math.min(15, places.length - 1);
    for (int first = 0; first + span < places.length; first++) {
      double largest = 0;
      for (int left = first; left <= first + span; left++) {
        for (int right = left + 2; right <= first + span; right++) {
          for (int at = left + 1; at < right; at++) {
            double share = (at - left) / (double) (right - left);
            double low = height(frame, places[left], v, floor);
            double edge = low + share * (height(frame, places[right], v, floor) - low);
            largest = Math.max(largest, edge - height(frame, places[at], v, floor));
          }
        }
      }
      gaps.add(largest);
    }
    return gaps;
  }

  private static double height(Frame frame, double u, double v, DoubleBinaryOperator floor) {
    return floor.applyAsDouble(frame.x(u, v), frame.y(u, v));
  }

  private static DoubleBinaryOperator rough(int seed) {
    Random random = new Random(seed);
    double a = 2 + 3 * random.nextDouble();
    double b = 2 + 3 * random.nextDouble();
    return (x, y) -> 0.002 * Math.sin(a * x + y) + 0.001 * Math.cos(b * y - 3 * x) + 0.002 * x;
  }

  private static Polygon room() {
    try {
      return (Polygon) new WKTReader().read("POLYGON((0 0,3 0,3 1.3,1.9 1.3,1.9 2.2,0 2.2,0 0))");
    } catch (ParseException e) {
      throw new IllegalStateException(e);
    }
  }
}
