package dev.fillplane.quantity;

/**
 * A number that carries its dimension, for places where the dimension differs from row to row. On
 * the wire it is {@code {value, unit}} in the caller's units.
 *
 * @param si the value in the SI unit of the dimension; finite
 * @param dimension what it measures
 */
public record Amount(double si, Dimension dimension) {

  /** Refuses a value that is not finite. */
  public Amount {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(dimension + " is not a number: " + si);
    }
  }

  /** An amount of {@code dimension}. */
  public static Amount of(double si, Dimension dimension) {
    return new Amount(si, dimension);
  }

  /** The number in the unit that {@code system} uses for this dimension. */
  public double in(UnitSystem system) {
    return dimension.unit(system).fromSi(si);
  }
}
