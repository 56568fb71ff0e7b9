package dev.fillplane.heat;

/** Limits of mix water and how ice chills a barrel of it. */
public final class WaterBarrel {

  /** Colder water leaves the polymer undissolved (common practice, no source). */
  public static final double COLDEST = 5;

  /** Warmer water can set the mix in a flash (common practice, no source). */
  public static final double WARMEST = 30;

  /** Warmer water is worth a word (common practice, no source). */
  public static final double WARM = 25;

  private WaterBarrel() {}

  /** Whether mix water may have this temperature. */
  public static boolean allows(double temperature) {
    return COLDEST <= temperature && temperature <= WARMEST;
  }

  /**
   * Ice that melts in a barrel until {@code water} kg, the melted ice included, have come from
   * {@code from} to {@code to}: {@code i (79.6 + to) = (water - i)(from - to)}. What has not melted
   * then is taken out. 0 where the water is cold enough.
   */
  public static double ice(double water, double from, double to) {
    return to < from ? water * (from - to) / (from + MixHeat.ICE_HEAT) : 0;
  }
}
