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
 */
public record Setup(
    String id, List<Reading> readings, @Measured(Dimension.HEIGHT) OptionalDouble error) {

  /** Copies the readings. */
  public Setup {
    readings = List.copyOf(readings);
  }
}
