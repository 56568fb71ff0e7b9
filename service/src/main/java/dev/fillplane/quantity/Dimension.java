package dev.fillplane.quantity;

/**
 * What a number measures, with the unit it has on the wire in each system. Factors are exact
 * (international foot and inch, avoirdupois pound, US liquid gallon; NIST SP 811).
 */
public enum Dimension {
  /** Coordinates and lengths on plan; inside m. */
  PLAN(new Unit("m", 1), new Unit("[ft_i]", Si.FOOT)),
  /** Readings, elevations, depths, gaps; inside m. */
  HEIGHT(new Unit("mm", 1e-3), new Unit("[in_i]", Si.INCH)),
  /** Variances of heights; inside m2. */
  HEIGHT_VARIANCE(new Unit("mm2", 1e-6), new Unit("[in_i]2", Si.INCH * Si.INCH)),
  /** Fall of a plane; inside m/m. */
  SLOPE(new Unit("mm/m", 1e-3), new Unit("[in_i]/[ft_i]", Si.INCH / Si.FOOT)),
  /** Areas on plan; inside m2. */
  AREA(new Unit("m2", 1), new Unit("[sft_i]", Si.FOOT * Si.FOOT)),
  /** Volumes of underlayment; inside m3. */
  FILL(new Unit("L", 1e-3), new Unit("[cft_i]", Si.FOOT * Si.FOOT * Si.FOOT)),
  /** Money for a volume of underlayment or of floor, as a decimal string; inside for a m3. */
  FILL_PRICE(new Unit("/L", 1e3), new Unit("/[cft_i]", 1 / (Si.FOOT * Si.FOOT * Si.FOOT))),
  /** Volumes of water and primer; inside m3. */
  LIQUID(new Unit("L", 1e-3), new Unit("[qt_us]", Si.GALLON / 4)),
  /** Area that a volume of liquid covers; inside m2/m3. */
  COVERAGE(new Unit("m2/L", 1e3), new Unit("[sft_i]/[gal_us]", Si.FOOT * Si.FOOT / Si.GALLON)),
  /** Masses; inside kg. */
  MASS(new Unit("kg", 1), new Unit("[lb_av]", Si.POUND)),
  /** Densities; inside kg/m3. */
  DENSITY(
      new Unit("kg/m3", 1), new Unit("[lb_av]/[cft_i]", Si.POUND / (Si.FOOT * Si.FOOT * Si.FOOT))),
  /** Temperatures; inside degrees Celsius. */
  TEMPERATURE(new Unit("Cel", 1), new Unit("[degF]", 5.0 / 9.0, -32)),
  /** Differences of temperature; inside K. */
  TEMPERATURE_DIFFERENCE(new Unit("K", 1), new Unit("[degF]", 5.0 / 9.0)),
  /** Speed of the air over the floor; inside m/s. */
  AIRSPEED(new Unit("km/h", 1 / 3.6), new Unit("[mi_i]/h", 1609.344 / 3600)),
  /** Flow of air through a shroud or fan; inside m3/s. */
  AIRFLOW(new Unit("m3/h", 1 / 3600.0), new Unit("[cft_i]/min", Si.FOOT * Si.FOOT * Si.FOOT / 60)),
  /** Water leaving a fresh surface; inside kg/m2/s. */
  EVAPORATION(
      new Unit("kg/m2/h", 1 / 3600.0),
      new Unit("[lb_av]/[sft_i]/h", Si.POUND / (Si.FOOT * Si.FOOT) / 3600)),
  /** Weight on an area; inside Pa. */
  SURFACE_LOAD(
      new Unit("kPa", 1e3),
      new Unit("[lbf_av]/[sft_i]", Si.POUND * Si.GRAVITY / (Si.FOOT * Si.FOOT))),
  /** Dust in the air; inside kg/m3. */
  CONCENTRATION(new Unit("ug/m3", 1e-9), new Unit("ug/m3", 1e-9)),
  /** Energies of activation; inside J/mol. */
  MOLAR_ENERGY(new Unit("kJ/mol", 1e3), new Unit("kJ/mol", 1e3)),
  /** Durations; inside s. */
  TIME(new Unit("min", 60), new Unit("min", 60)),
  /** Angles; inside rad. */
  ANGLE(new Unit("deg", Math.PI / 180), new Unit("deg", Math.PI / 180));

  private final Unit metric;
  private final Unit us;

  Dimension(Unit metric, Unit us) {
    this.metric = metric;
    this.us = us;
  }

  /** The unit in which {@code system} writes this dimension. */
  public Unit unit(UnitSystem system) {
    return system == UnitSystem.METRIC ? metric : us;
  }

  private static final class Si {
    static final double INCH = 0.0254;
    static final double FOOT = 0.3048;
    static final double GALLON = 231 * INCH * INCH * INCH;
    static final double POUND = 0.45359237;
    static final double GRAVITY = 9.80665;
  }
}
