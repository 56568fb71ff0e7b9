package dev.fillplane.flatness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Takes the worst of many gaps, each hollow once: one whose lowest place lies nearer to that of a
 * worse one than half the straightedge is the same hollow (own rule).
 */
final class WorstGaps {

  /** As many are told. */
  static final int MOST = 100;

  private WorstGaps() {}

  static List<Gap> of(List<Gap> found, double length, ToDoubleFunction<Gap> badness) {
    List<Gap> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(badness).reversed());
    List<Gap> kept = new ArrayList<>();
    for (Gap gap : sorted) {
      if (kept.size() < MOST && isNew(gap, kept, length / 2)) {
        kept.add(gap);
      }
    }
    return kept;
  }

  private static boolean isNew(Gap gap, List<Gap> kept, double apart) {
    for (Gap worse : kept) {
      if (worse.at().distance(gap.at()) < apart) {
        return false;
      }
    }
    return true;
  }
}
