package dev.fillplane.render;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Position;

/** Writes the quantities of a page as a person on site reads them. */
final class Figures {

  private static final int IN_A_FOOT = 12;

  private final UnitSystem units;
  private final Heights heights;

  Figures(UnitSystem units) {
    this.units = units;
    heights = new Heights(units);
  }

  boolean metric() {
    return units == UnitSystem.METRIC;
  }

  Heights heights() {
    return heights;
  }

  /** A length on plan: to 1 cm, or feet and inches. */
  String length(double length) {
    return metric() ? number(Dimension.PLAN, length, 2) + " m" : feet(length);
  }

  private static String feet(double length) {
    long inches =
        Math.round(IN_A_FOOT * Math.abs(Dimension.PLAN.unit(UnitSystem.US).fromSi(length)));
    String sign = length < 0 && inches > 0 ? "-" : "";
    return sign + inches / IN_A_FOOT + " ft " + inches % IN_A_FOOT + " in";
  }

  /** A place on plan. */
  String place(Position place) {
    return length(place.x()) + " / " + length(place.y());
  }

  /** Mix water to a mark of a jug. */
  String water(double volume) {
    return JugMark.of(volume, units).toPlainString() + " " + liquidUnit();
  }

  String liquidUnit() {
    return metric() ? "L" : "qt";
  }

  /** Primer or water in all, up to the next litre or quart. */
  String liquid(double volume) {
    double value = Dimension.LIQUID.unit(units).fromSi(volume);
    return Markup.number(Math.ceil(value - 1e-6)) + " " + liquidUnit();
  }

  String mass(double mass) {
    double value = Dimension.MASS.unit(units).fromSi(mass);
    return Markup.number(Rounding.toDecimals(value, value < 10 ? 1 : 0))
        + (metric() ? " kg" : " lb");
  }

  String temperature(double temperature) {
    return number(Dimension.TEMPERATURE, temperature, 0)
        + (metric() ? "\u00A0\u00B0C" : "\u00A0\u00B0F");
  }

  String area(double area) {
    return number(Dimension.AREA, area, 1) + (metric() ? " m\u00B2" : " sq ft");
  }

  private String number(Dimension dimension, double si, int decimals) {
    return Markup.number(Rounding.toDecimals(dimension.unit(units).fromSi(si), decimals));
  }

  /** The units of this page, in words. */
  String named() {
    return metric()
        ? "metric: mm, m, m\u00B2, L, kg, \u00B0C"
        : "US: inches, feet, sq ft, US quarts, lb, \u00B0F";
  }
}
