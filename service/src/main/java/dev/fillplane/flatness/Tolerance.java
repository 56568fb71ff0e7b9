package dev.fillplane.flatness;

import java.util.Optional;

/**
 * A published demand on the flatness of floors.
 *
 * @param id the word for it in a request
 * @param name what people call it
 * @param spanNeeded whether its limit depends on the distance between the contacts
 * @param limit of the gap, where it has one that depends on nothing
 * @param fNumbers that it asks for, if any
 * @param source where the figures come from
 */
public record Tolerance(
    String id,
    String name,
    boolean spanNeeded,
    Optional<FlatnessLimit> limit,
    Optional<FNumberClass> fNumbers,
    String source) {

  /** Shortest span of DIN 18202. */
  public static final double LEAST_SPAN = 0.1;

  /** Whether any limit of a gap follows from it. */
  public boolean hasGap() {
    return spanNeeded || limit.isPresent();
  }

  /**
   * The limit of the gap under an edge of {@code span}, m; one that does not depend on the span
   * keeps its own edge.
   */
  public Optional<FlatnessLimit> at(double span) {
    return spanNeeded
        ? Optional.of(new FlatnessLimit(span, Din18202.limit(line(), span), source))
        : limit;
  }

  /** The largest gap allowed between contacts {@code span} apart, m; {@code usual} if fixed. */
  public double allowed(double span, double usual) {
    return spanNeeded ? Din18202.limit(line(), Math.max(span, LEAST_SPAN)) : usual;
  }

  private int line() {
    return id.charAt(id.length() - 1) - '0';
  }
}
