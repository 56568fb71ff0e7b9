package dev.fillplane.plan;

import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A quantity of a plan request with its usual value and the range outside which it is refused; all
 * in SI, since the contract could say them in one unit system only.
 *
 * @param name what it is, in a few words
 * @param path its place in a request: names with {@code /} between
 * @param dimension what it measures
 * @param usual what holds where it is not told, if one value does
 * @param from least value
 * @param to largest value
 * @param told the value of a request
 */
public record Term(
    String name,
    String path,
    Dimension dimension,
    OptionalDouble usual,
    double from,
    double to,
    Function<PlanRequest, OptionalDouble> told) {

  /** Its place as a JSON Pointer in fragment form. */
  public String pointer() {
    return "#/" + path;
  }
}
