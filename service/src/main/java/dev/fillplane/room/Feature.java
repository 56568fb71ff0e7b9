package dev.fillplane.room;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something in the floor that the pour must heed.
 *
 * @param kind what it is
 * @param from one end of a line
 * @param to the other end of a line
 * @param at the middle of what is no line
 * @param width across the line, or from side to side
 * @param depth of a gap
 * @param moving whether a crack still moves, if known
 */
public record Feature(
    FeatureKind kind,
    Optional<Position> from,
    Optional<Position> to,
    Optional<Position> at,
    @Measured(Dimension.HEIGHT) OptionalDouble width,
    @Measured(Dimension.HEIGHT) OptionalDouble depth,
    Optional<Boolean> moving) {

  /** Of which it is not told whether it moves. */
  public Feature(
      FeatureKind kind,
      Optional<Position> from,
      Optional<Position> to,
      Optional<Position> at,
      OptionalDouble width,
      OptionalDouble depth) {
    this(kind, from, to, at, width, depth, Optional.empty());
  }

  /** A line between two positions. */
  public static Feature line(FeatureKind kind, Position from, Position to) {
    return new Feature(
        kind,
        Optional.of(from),
        Optional.of(to),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  /** Something about a position. */
  public static Feature at(FeatureKind kind, Position at, double width) {
    return new Feature(
        kind,
        Optional.empty(),
        Optional.empty(),
        Optional.of(at),
        OptionalDouble.of(width),
        OptionalDouble.empty());
  }

  /** Whether it is told by two ends. */
  public boolean hasLine() {
    return from.isPresent() && to.isPresent();
  }

  /** From end to end; 0 for what is no line. */
  public double length() {
    return hasLine() ? from.get().distance(to.get()) : 0;
  }
}
