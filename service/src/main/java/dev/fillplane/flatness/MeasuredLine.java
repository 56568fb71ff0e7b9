package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;
import java.util.Optional;

/**
 * A straight line over a floor, read at even distances.
 *
 * @param id the caller's name of the line
 * @param spacing between the readings; positive
 * @param elevations of the readings in their order, 3 or more
 * @param from the place of the first reading on plan, if told
 * @param to the place of the last reading on plan, told together with from
 * @param readingError standard deviation of an elevation; 0 unless told: it counts as exact
 */
public record MeasuredLine(
    String id,
    @Measured(Dimension.PLAN) double spacing,
    @Measured(Dimension.HEIGHT) double[] elevations,
    Optional<Position> from,
    Optional<Position> to,
    @Measured(Dimension.HEIGHT) Double readingError) {

  /** Fills in what was left out. */
  public MeasuredLine {
    readingError = readingError == null ? 0 : readingError;
  }

  /** From the first reading to the last. */
  public double length() {
    return (elevations.length - 1) * spacing;
  }

  /** Whether it is told where the line lies. */
  public boolean isPlaced() {
    return from.isPresent() && to.isPresent();
  }
}
