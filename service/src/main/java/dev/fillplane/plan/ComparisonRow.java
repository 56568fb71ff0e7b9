package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import dev.fillplane.flatness.Passes;
import dev.fillplane.pour.Verdict;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One plan among others. Where there is none only name and errors are told.
 *
 * @param name the caller's; base for the request that was varied
 * @param verdict of the pour
 * @param passes whether the floor is then flat enough
 * @param bags likely
 * @param order bags to order
 * @param volume of the pour
 * @param grind volume to grind off
 * @param grindArea floor to grind
 * @param minutes of pouring, and of one person grinding
 * @param cost at the prices of the request, if told
 * @param errors why there is no plan
 */
public record ComparisonRow(
    String name,
    Optional<Verdict> verdict,
    Optional<Passes> passes,
    OptionalInt bags,
    OptionalInt order,
    @Measured(Dimension.FILL) OptionalDouble volume,
    @Measured(Dimension.FILL) OptionalDouble grind,
    @Measured(Dimension.AREA) OptionalDouble grindArea,
    @Measured(Dimension.TIME) OptionalDouble minutes,
    Optional<Money> cost,
    List<Finding> errors) {

  /** Copies the errors. */
  public ComparisonRow {
    errors = List.copyOf(errors);
  }

  static ComparisonRow of(String name, PlanRequest request, Plan plan) {
    double ground = plan.grinding().volume();
    return new ComparisonRow(
        name,
        Optional.of(plan.pour().verdict()),
        Optional.of(plan.flatness().after().verdict()),
        OptionalInt.of(plan.quantities().bags().likely()),
        OptionalInt.of(plan.quantities().bags().order()),
        OptionalDouble.of(plan.depth().volume()),
        OptionalDouble.of(ground),
        OptionalDouble.of(plan.grinding().area()),
        OptionalDouble.of(plan.pour().minutes() + plan.grinding().minutes()),
        new Costs(request.target().prices()).of(plan.depth().volume(), ground),
        List.of());
  }

  static ComparisonRow failed(String name, List<Finding> errors) {
    return new ComparisonRow(
        name,
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        errors);
  }

  /** What it is put in order by; nothing where that is not told. */
  OptionalDouble measure(ComparedBy by) {
    return switch (by) {
      case COST ->
          cost.isPresent()
              ? OptionalDouble.of(cost.get().amount().doubleValue())
              : OptionalDouble.empty();
      case BAGS -> bags.isPresent() ? OptionalDouble.of(bags.getAsInt()) : OptionalDouble.empty();
      case VOLUME -> volume;
      case GRIND -> grind;
      case MINUTES -> minutes;
    };
  }
}
