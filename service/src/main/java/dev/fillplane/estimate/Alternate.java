package dev.fillplane.estimate;

import dev.fillplane.finding.Finding;
import dev.fillplane.pour.Verdict;
import dev.fillplane.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The cost of another way to do it. Where there is no plan only name and errors are told.
 *
 * @param name the caller's
 * @param verdict of its pour
 * @param order bags to order
 * @param hours of labour
 * @param total of its lines with a price, if there are prices
 * @param more than the plan as asked; negative where it costs less
 * @param unpriced codes of its lines without a price, which are in neither sum
 * @param errors why there is no plan
 */
public record Alternate(
    String name,
    Optional<Verdict> verdict,
    OptionalInt order,
    Optional<Measure> hours,
    Optional<Money> total,
    Optional<Money> more,
    List<String> unpriced,
    List<Finding> errors) {

  /** Copies the lists. */
  public Alternate {
    unpriced = List.copyOf(unpriced);
    errors = List.copyOf(errors);
  }

  static Alternate failed(String name, List<Finding> errors) {
    return new Alternate(
        name,
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        errors);
  }
}
