package dev.fillplane.render;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Inches;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.UnitSystem;

/**
 * Writes heights, lengths and volumes as a person on site reads them: mm, or fractions of an inch.
 */
final class Heights {

  private final UnitSystem units;

  Heights(UnitSystem units) {
    this.units = units;
  }

  /** A height to 1 mm or 1/16 in, without its unit. */
  String bare(double height) {
    double value = Dimension.HEIGHT.unit(units).fromSi(height);
    return metric() ? Markup.number(Rounding.toDecimals(value, 0)) : Inches.text(value);
  }

  /** The same with its unit. */
  String full(double height) {
    return bare(height) + " " + unit();
  }

  /** An elevation: to 0.1 mm or 1/16 in, with its unit. */
  String elevation(double elevation) {
    double value = Dimension.HEIGHT.unit(units).fromSi(elevation);
    return (metric() ? Markup.number(Rounding.toDecimals(value, 1)) : Inches.text(value))
        + " "
        + unit();
  }

  String unit() {
    return metric() ? "mm" : "in";
  }

  /** The unit in words. */
  String unitName() {
    return metric() ? "mm" : "inches";
  }

  boolean metric() {
    return units == UnitSystem.METRIC;
  }

  /** A volume of underlayment with its unit. */
  String volume(double volume) {
    double value = Dimension.FILL.unit(units).fromSi(volume);
    int decimals = value < 100 ? 1 : 0;
    return Markup.number(Rounding.toDecimals(value, decimals)) + (metric() ? " L" : " cu ft");
  }

  /** A slope with its unit. */
  String slope(double slope) {
    double value = Dimension.SLOPE.unit(units).fromSi(slope);
    return metric()
        ? Markup.number(Rounding.toDecimals(value, 2)) + " mm/m"
        : Rounding.toDecimals(value, 3) + " in/ft";
  }

  /** Metres in one unit of length on plan. */
  double planUnit() {
    return Dimension.PLAN.unit(units).factor();
  }

  /** A length on plan, given in its unit. */
  String length(double inUnit) {
    return Markup.number(inUnit) + (metric() ? " m" : " ft");
  }
}
