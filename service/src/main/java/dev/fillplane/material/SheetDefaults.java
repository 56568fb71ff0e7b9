package dev.fillplane.material;

/**
 * What holds where a sheet is silent. Common practice, no source.
 *
 * <p>Beside these: cement as binder, {@link ActivationEnergy#USUAL}, and a healing time of {@link
 * #HEALING_SHARE} of the working time.
 */
public final class SheetDefaults {

  /** Water may differ by this share of what is told. */
  public static final double WATER_TOLERANCE = 0.02;

  /** Thinnest layer. */
  public static final double MINIMUM_LIFT = 0.003;

  /** Thickest layer. */
  public static final double MAXIMUM_LIFT = 0.030;

  /** Time from water on powder until it no longer flows together. */
  public static final double WORKING_TIME = 15 * 60.0;

  /** Healing time as a share of the working time. */
  public static final double HEALING_SHARE = 0.6;

  /** Temperature at which the times hold. */
  public static final double WORKING_TIME_AT = 20;

  /** Temperatures of air, slab and mix that are allowed (50 to 86 F). */
  public static final TemperatureRange TEMPERATURE_RANGE = new TemperatureRange(10, 30);

  /** Time under the mixer. */
  public static final double MIX_TIME = 180;

  /** Area that a volume of primer covers in one coat, 8 m2/L. */
  public static final double PRIMER_COVERAGE = 8000;

  /** Time until people may walk on it. */
  public static final double WALK_ON = 3 * 3600.0;

  /** Time until it may be covered. */
  public static final double COVERING_AFTER = 24 * 3600.0;

  private SheetDefaults() {}
}
