package dev.fillplane.quantity;

/**
 * A unit of the wire: its UCUM code and its exact relation to the SI unit used inside, {@code si =
 * (value + offset) * factor}.
 *
 * @param code case-sensitive UCUM code
 * @param factor SI units in one of this unit; positive
 * @param offset what is added to a value of this unit before scaling; 0 except for temperatures
 */
public record Unit(String code, double factor, double offset) {

  Unit(String code, double factor) {
    this(code, factor, 0);
  }

  /** The SI value of {@code value} of this unit. */
  public double toSi(double value) {
    return (value + offset) * factor;
  }

  /** How many of this unit the SI value {@code si} is. */
  public double fromSi(double si) {
    return si / factor - offset;
  }
}
