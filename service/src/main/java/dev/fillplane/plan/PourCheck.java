package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import dev.fillplane.pour.Change;
import dev.fillplane.pour.CrewNeed;
import dev.fillplane.pour.LostEdge;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.Ribbon;
import dev.fillplane.pour.Verdict;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a pour in bare numbers holds.
 *
 * @param verdict whether every wet edge is met in time
 * @param reasons why
 * @param changes the least changes that make it hold
 * @param crew the crew and the people that would do
 * @param minutes from the start of the work to the last batch on the floor
 * @param healingTime from first water until an edge no longer closes, on this site
 * @param batches mixed
 * @param bags in them
 * @param ribbons side by side
 * @param ribbonWidth width of each
 * @param length of the floor along the pour
 * @param oldestEdge age of the oldest edge when it is met; 0 if nothing meets one
 * @param lostEdge where and when it breaks, if it does
 * @param lostAt how far from the start of the pour that ribbon begins
 * @param warnings what is odd about the request
 */
public record PourCheck(
    Verdict verdict,
    List<Remark> reasons,
    List<Change> changes,
    CrewNeed crew,
    @Measured(Dimension.TIME) double minutes,
    @Measured(Dimension.TIME) double healingTime,
    int batches,
    int bags,
    int ribbons,
    @Measured(Dimension.PLAN) double ribbonWidth,
    @Measured(Dimension.PLAN) double length,
    @Measured(Dimension.TIME) double oldestEdge,
    Optional<LostEdge> lostEdge,
    @Measured(Dimension.PLAN) OptionalDouble lostAt,
    List<Finding> warnings) {

  /** Copies the lists. */
  public PourCheck {
    reasons = List.copyOf(reasons);
    changes = List.copyOf(changes);
    warnings = List.copyOf(warnings);
  }

  /** Of a pour of one bay, {@code length} long. */
  static PourCheck of(Pour pour, double healingTime, double length, List<Finding> warnings) {
    List<Ribbon> ribbons = pour.bays().get(0).ribbons();
    double width = length / ribbons.size();
    Optional<LostEdge> lost = pour.lostEdge();
    return new PourCheck(
        pour.verdict(),
        pour.reasons(),
        pour.changes(),
        pour.crew(),
        pour.minutes(),
        healingTime,
        pour.totals().batches(),
        pour.totals().bags(),
        ribbons.size(),
        width,
        length,
        ribbons.stream().mapToDouble(Ribbon::edgeAge).max().orElse(0),
        lost,
        lost.map(edge -> OptionalDouble.of((edge.ribbon() - 1) * width))
            .orElse(OptionalDouble.empty()),
        warnings);
  }
}
