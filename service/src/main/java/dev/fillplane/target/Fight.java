package dev.fillplane.target;

import dev.fillplane.target.Cut.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * Limits that no plane keeps together, none of which can be spared (an irreducible infeasible set,
 * by the deletion filter of Chinneck and Dravnieks, ORSA J. Computing 3, 1991).
 *
 * @param by what the plane that comes nearest misses some of them by
 * @param bands that fight
 * @param highs high points that fight
 * @param slope whether the limit on the slope fights
 */
record Fight(double by, List<Band> bands, List<Integer> highs, boolean slope) {

  /**
   * Finds one; empty where a plane keeps all limits, or where the linear program fails, which is
   * not expected.
   */
  static Optional<Fight> among(Limits limits) {
    PlaneProgram program = new PlaneProgram(limits);
    double[] nearest;
    try {
      nearest = program.settle(Unknown.EXCESS);
    } catch (MathIllegalStateException unsolved) {
      return Optional.empty();
    }
    double excess = Unknown.EXCESS.in(nearest);
    double unit = program.scale().unit();
    if (excess * unit <= Limits.TOUCH) {
      return Optional.empty();
    }
    double touch = Limits.TOUCH / unit;
    List<Cut> needed = new ArrayList<>();
    for (Cut cut : program.cuts()) {
      if (cut.spare(nearest) + (cut.loose() ? excess : 0) <= touch) {
        needed.add(cut);
      }
    }
    for (Cut cut : List.copyOf(needed)) {
      List<Cut> rest = needed.stream().filter(other -> other != cut).toList();
      if (excess(rest) >= excess - touch) {
        needed.remove(cut);
      }
    }
    return Optional.of(of(needed, excess * unit, limits));
  }

  private static double excess(List<Cut> cuts) {
    Cuts rows = new Cuts(4);
    rows.atLeast(0, 0, 0, 0, 1);
    for (Cut cut : cuts) {
      rows.atLeast(cut.value(), cut.level(), cut.alongX(), cut.alongY(), cut.loose() ? 1 : 0);
    }
    try {
      return rows.minimise(3)[3];
    } catch (MathIllegalStateException unsolved) {
      return 0;
    }
  }

  private static Fight of(List<Cut> needed, double by, Limits limits) {
    List<Integer> bands = indices(needed, Cause.BAND);
    boolean slope = needed.stream().anyMatch(cut -> cut.cause() == Cause.SLOPE);
    return new Fight(
        by,
        bands.stream().map(limits.bands()::get).toList(),
        indices(needed, Cause.HIGH_POINT),
        slope);
  }

  private static List<Integer> indices(List<Cut> cuts, Cause cause) {
    return cuts.stream()
        .filter(cut -> cut.cause() == cause)
        .map(Cut::index)
        .distinct()
        .sorted()
        .toList();
  }
}
