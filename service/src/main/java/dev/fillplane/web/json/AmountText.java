package dev.fillplane.web.json;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Inches;
import dev.fillplane.quantity.Load;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts as sentences tell them, with their unit. */
final class AmountText {

  /** In. */
  private static final double SMALLEST_PART = 1 / 16.0;

  private AmountText() {}

  /** An amount as people read it: rounded to what can be told apart on site, with its unit. */
  static String of(Amount amount, UnitSystem system) {
    return switch (amount.dimension()) {
      case HEIGHT -> system == UnitSystem.US ? inches(amount) : exact(amount, system);
      case SURFACE_LOAD -> load(amount, system);
      default -> exact(amount, system);
    };
  }

  /** The same, heights in inches as decimals too. */
  static String exact(Amount amount, UnitSystem system) {
    return rounded(amount.in(system), decimals(amount, system))
        + " "
        + sign(amount.dimension(), system);
  }

  /** As on a tape; less than its smallest part as a decimal. */
  private static String inches(Amount height) {
    double inches = height.in(UnitSystem.US);
    return Math.abs(inches) < SMALLEST_PART
        ? exact(height, UnitSystem.US)
        : Inches.text(inches) + " in";
  }

  /** The trade speaks of the mass on an area; a metric request tells kPa. */
  private static String load(Amount load, UnitSystem system) {
    if (system == UnitSystem.US) {
      return exact(load, system);
    }
    double mass = Load.massPerArea(load);
    return rounded(mass, Math.abs(mass) < 10 ? 1 : 0) + " kg per m2 (" + exact(load, system) + ")";
  }

  private static String rounded(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** Without zeros at the end of its decimals. */
  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private static int decimals(Amount amount, UnitSystem system) {
    double size = Math.abs(amount.in(system));
    int usual = decimals(amount.dimension(), system);
    return switch (amount.dimension()) {
      case HEIGHT -> size >= 100 ? 0 : size >= 10 ? 1 : usual;
      case AREA -> size >= 100 ? 0 : size < 1 ? 2 : usual;
      default -> size >= 100 ? 0 : usual;
    };
  }

  private static int decimals(Dimension dimension, UnitSystem system) {
    boolean metric = system == UnitSystem.METRIC;
    return switch (dimension) {
      case HEIGHT, FILL, LIQUID, SLOPE -> metric ? 1 : 2;
      case PLAN, EVAPORATION, HEIGHT_VARIANCE, FILL_PRICE -> 2;
      case SURFACE_LOAD -> metric ? 2 : 1;
      case AREA, MASS, COVERAGE, TIME, TEMPERATURE_DIFFERENCE, MOLAR_ENERGY -> 1;
      case TEMPERATURE, DENSITY, AIRSPEED, AIRFLOW, CONCENTRATION, ANGLE -> 0;
    };
  }

  private static String sign(Dimension dimension, UnitSystem system) {
    boolean metric = system == UnitSystem.METRIC;
    return switch (dimension) {
      case PLAN -> metric ? "m" : "ft";
      case HEIGHT -> metric ? "mm" : "in";
      case HEIGHT_VARIANCE -> metric ? "mm2" : "in2";
      case SLOPE -> metric ? "mm per m" : "in per ft";
      case AREA -> metric ? "m2" : "sq ft";
      case FILL -> metric ? "L" : "cu ft";
      case FILL_PRICE -> metric ? "per L" : "per cu ft";
      case LIQUID -> metric ? "L" : "qt";
      case COVERAGE -> metric ? "m2 per L" : "sq ft per gal";
      case MASS -> metric ? "kg" : "lb";
      case DENSITY -> metric ? "kg per m3" : "lb per cu ft";
      case TEMPERATURE -> metric ? "C" : "F";
      case TEMPERATURE_DIFFERENCE -> metric ? "K" : "F";
      case AIRSPEED -> metric ? "km/h" : "mph";
      case AIRFLOW -> metric ? "m3/h" : "cfm";
      case EVAPORATION -> metric ? "kg per m2 and hour" : "lb per sq ft and hour";
      case SURFACE_LOAD -> metric ? "kPa" : "lb per sq ft";
      case CONCENTRATION -> "ug per m3";
      case MOLAR_ENERGY -> "kJ per mol";
      case TIME -> "min";
      case ANGLE -> "deg";
    };
  }
}
