package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * What is left over round one loop of the network.
 *
 * @param setups those it goes through, in the order of the request
 * @param value positive where the loop comes back too high, walked with its earlier setups first;
 *     which way round is arbitrary for one or two setups
 * @param limit the largest that is allowed, by its absolute value
 */
public record Loop(
    List<String> setups,
    @Measured(Dimension.HEIGHT) double value,
    @Measured(Dimension.HEIGHT) double limit) {

  /** Copies the setups. */
  public Loop {
    setups = List.copyOf(setups);
  }
}
