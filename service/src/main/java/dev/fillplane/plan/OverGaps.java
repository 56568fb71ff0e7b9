package dev.fillplane.plan;

import dev.fillplane.flatness.EdgeCheck;
import dev.fillplane.flatness.Enough;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.Passes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Which gaps are told of a floor: those of the figures that it does not surely keep. */
final class OverGaps {

  private static final int MOST = 100;

  private OverGaps() {}

  /**
   * The gaps over their limits, the worst by its limit first, at most 100. Where one of the figures
   * will do, those of the one that the floor keeps best.
   *
   * @param checks of the figures, in their order
   * @param over the gaps over a figure
   */
  static List<ListedGap> listed(
      WantedFlatness wanted, List<EdgeCheck> checks, Function<GapLimit, List<ListedGap>> over) {
    List<ListedGap> gaps = new ArrayList<>();
    for (int i = 0; i < checks.size(); i++) {
      boolean counts = wanted.enough() == Enough.ALL || i == best(checks);
      if (counts && checks.get(i).verdict() != Passes.WITHIN) {
        gaps.addAll(over.apply(wanted.figures().get(i)));
      }
    }
    gaps.sort(Comparator.comparingDouble((ListedGap gap) -> gap.gap() / gap.limit()).reversed());
    return gaps.subList(0, Math.min(MOST, gaps.size()));
  }

  private static int best(List<EdgeCheck> checks) {
    int best = 0;
    for (int i = 1; i < checks.size(); i++) {
      best = checks.get(i).verdict().compareTo(checks.get(best).verdict()) < 0 ? i : best;
    }
    return best;
  }
}
