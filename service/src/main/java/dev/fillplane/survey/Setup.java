package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One position of the laser and what was read from it.
 *
 * @param id its name, unique in the request
 * @param readings at least one
 * @param error standard deviation of one of its readings; {@link Survey#readingError()} unless told
 * @param x where the laser stands on plan, about which its plane may be tilted
 * @param y where the laser stands on plan; given with x
 */
public record Setup(
    String id,
    List<Reading> readings,
    @Measured(Dimension.HEIGHT) OptionalDouble error,
    @Measured(Dimension.PLAN) OptionalDouble x,
    @Measured(Dimension.PLAN) OptionalDouble y) {

  /** Copies the readings. */
  public Setup {
    readings = List.copyOf(readings);
  }
}
