package dev.fillplane.estimate;

import dev.fillplane.finding.Finding;
import dev.fillplane.plan.Computed;
import dev.fillplane.pour.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * A plan line by line.
 *
 * @param reference the caller's name of the unit
 * @param verdict of the pour
 * @param lines by kind
 * @param ownOrBid both costs, where a bid was told
 * @param alternates in the order of the request
 * @param warnings those of the plan, and of the prices
 */
public record LineItems(
    Optional<String> reference,
    Verdict verdict,
    List<LineItem> lines,
    LineTotals totals,
    Optional<OwnOrBid> ownOrBid,
    List<Alternate> alternates,
    List<Finding> warnings,
    Computed computed) {

  /** Copies the lists. */
  public LineItems {
    lines = List.copyOf(lines);
    alternates = List.copyOf(alternates);
    warnings = List.copyOf(warnings);
  }
}
