package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.tinfour.common.IIncrementalTinNavigator;
import org.tinfour.common.IQuadEdge;

/**
 * The places of a dense survey that stand out from their neighbours. Every place is compared with
 * the mean of its neighbours first, by one over the square of their distance; the {@link #LOOKED}
 * that differ most are then left out one by one, the worst first, and one that stands out has no
 * say about the next. To stand out, a residual has to be larger than 3 deviations and than the
 * largest that one in twenty surveys of as many right readings shows (Bonferroni's bound).
 */
final class DenseDoubts {

  /** Most places that are told. */
  static final int MOST = 100;

  private static final int LOOKED = 400;
  private static final double LEAST = 3;
  private static final double CHANCE = 0.05;

  private final DensePlaces places;
  private final Triangulation triangulation;

  DenseDoubts(DensePlaces places, Triangulation triangulation) {
    this.places = places;
    this.triangulation = triangulation;
  }

  /** Each place that stands out, by its spots. */
  LeaveOneOut find(Method method, Roughness roughness, double variance) {
    boolean[] out = new boolean[places.count()];
    double[] residual = new double[places.count()];
    double[] standardized = new double[places.count()];
    double limit = limit(places.count());
    IIncrementalTinNavigator navigator = triangulation.tin().getNavigator();
    int found = 0;
    for (int place : oddest()) {
      Stopped.ifInterrupted();
      var omission = Omission.of(places, navigator, method, place, out);
      if (omission.isEmpty() || found == MOST) {
        continue;
      }
      double x = places.x()[place];
      double y = places.y()[place];
      double own = variance * (1 + omission.get().squares());
      double spread = Math.sqrt(own + roughness.variance(x, y, omission.get().distance()));
      double by = omission.get().residual() / spread;
      if (Math.abs(by) > limit) {
        out[place] = true;
        residual[place] = omission.get().residual();
        standardized[place] = by;
        found++;
      }
    }
    return bySpot(out, residual, standardized);
  }

  static double limit(int count) {
    double bound = new NormalDistribution().inverseCumulativeProbability(1 - CHANCE / 2 / count);
    return Math.max(LEAST, bound);
  }

  private LeaveOneOut bySpot(boolean[] out, double[] residual, double[] standardized) {
    int spots = places.ofSpot().length;
    LeaveOneOut all = new LeaveOneOut(new double[spots], new double[spots], new boolean[spots]);
    for (int spot = 0; spot < spots; spot++) {
      Stopped.ifInterrupted();
      int place = places.ofSpot()[spot];
      all.told()[spot] = out[place];
      all.residual()[spot] = residual[place];
      all.standardized()[spot] = standardized[place];
    }
    return all;
  }

  /** The places that differ most from their neighbours, the worst first. */
  private int[] oddest() {
    double[] off = offNeighbours();
    Comparator<Integer> byOff = Comparator.comparingDouble(place -> off[place]);
    PriorityQueue<Integer> worst =
        new PriorityQueue<>(LOOKED + 1, byOff.thenComparing(Comparator.reverseOrder()));
    for (int place = 0; place < off.length; place++) {
      if (worst.size() < LOOKED || off[place] > off[worst.element()]) {
        worst.add(place);
        if (worst.size() > LOOKED) {
          worst.remove();
        }
      }
    }
    int[] sorted = new int[worst.size()];
    for (int i = sorted.length - 1; i >= 0; i--) {
      sorted[i] = worst.remove();
    }
    return sorted;
  }

  private double[] offNeighbours() {
    double[] weights = new double[places.count()];
    double[] sums = new double[places.count()];
    for (IQuadEdge edge : triangulation.tin().edges()) {
      if (edge.getA() != null && edge.getB() != null) {
        int a = edge.getA().getIndex();
        int b = edge.getB().getIndex();
        double dx = places.x()[a] - places.x()[b];
        double dy = places.y()[a] - places.y()[b];
        double weight = 1 / (dx * dx + dy * dy);
        double more = weight * (places.z()[a] - places.z()[b]);
        weights[a] += weight;
        weights[b] += weight;
        sums[a] += more;
        sums[b] -= more;
      }
    }
    double[] off = new double[places.count()];
    Arrays.setAll(off, i -> weights[i] > 0 ? Math.abs(sums[i] / weights[i]) : 0);
    return off;
  }
}
