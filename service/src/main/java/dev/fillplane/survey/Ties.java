package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Compares each two setups that share points after the adjustment, and warns where their mean
 * difference is above what is usual: 1.5 mm (common practice, no source), or three standard
 * deviations of the mean of that many differences of readings where that is more. The adjustment
 * takes a part of the difference away, so that the true deviation is smaller. Two setups that hang
 * together by their shared points alone always agree on average.
 */
final class Ties {

  /** Most ties that are told, the worst first. */
  static final int TOLD = 200;

  /** A tie should close within this. */
  static final double USUAL = 0.0015;

  private final Network network;
  private final PlaneEquations planes;
  private final double[][] sums;
  private final int[][] counts;

  Ties(Network network, PlaneEquations planes) {
    this.network = network;
    this.planes = planes;
    sums = new double[network.setups()][network.setups()];
    counts = new int[network.setups()][network.setups()];
    for (int point : network.ties()) {
      add(new Sight(network, point));
    }
  }

  private void add(Sight sight) {
    double[] made = new double[sight.groups()];
    for (int g = 0; g < made.length; g++) {
      made[g] = planes.plane(sight.setup(g), sight.point()) - sight.reading(g);
      for (int h = 0; h < g; h++) {
        sums[sight.setup(h)][sight.setup(g)] += made[g] - made[h];
        counts[sight.setup(h)][sight.setup(g)]++;
      }
    }
  }

  /** The worst first, equally bad ones in the order of the setups. */
  List<Tie> worst(String[] names) {
    List<Tie> all = new ArrayList<>();
    for (int s = 0; s < counts.length; s++) {
      for (int t = s + 1; t < counts.length; t++) {
        if (counts[s][t] > 0) {
          all.add(new Tie(names[s], names[t], counts[s][t], sums[s][t] / counts[s][t]));
        }
      }
    }
    all.sort(Comparator.comparingDouble((Tie tie) -> -Math.rint(size(tie))));
    return List.copyOf(all.subList(0, Math.min(TOLD, all.size())));
  }

  /** In nanometres, so that rounding does not order them. */
  private static double size(Tie tie) {
    return Math.abs(tie.difference()) * 1e9;
  }

  /** One warning a tie that is open, at the later of its setups. */
  void warn(String[] names, Place setups, Findings findings) {
    int warned = 0;
    for (int s = 0; s < counts.length; s++) {
      for (int t = s + 1; t < counts.length; t++) {
        double difference = counts[s][t] == 0 ? 0 : sums[s][t] / counts[s][t];
        if (Math.abs(difference) > limit(s, t) && warned++ < NearPoints.WARNINGS) {
          findings.warning(
              "tie-open",
              setups.at(t),
              "from",
              names[s],
              "to",
              names[t],
              "points",
              counts[s][t],
              "difference",
              Amount.of(difference, Dimension.HEIGHT),
              "limit",
              Amount.of(limit(s, t), Dimension.HEIGHT));
        }
      }
    }
  }

  private double limit(int s, int t) {
    double variance = (1 / network.weight(s) + 1 / network.weight(t)) / Math.max(1, counts[s][t]);
    return Math.max(USUAL, 3 * Math.sqrt(variance));
  }
}
