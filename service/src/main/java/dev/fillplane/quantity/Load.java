package dev.fillplane.quantity;

/** Weight on an area. */
public final class Load {

  private static final double GRAVITY = 9.80665;

  private Load() {}

  /** Of {@code mass} on every square metre. */
  public static Amount ofMassPerArea(double mass) {
    return Amount.of(mass * GRAVITY, Dimension.SURFACE_LOAD);
  }

  /** Of pounds of force on every square foot. */
  public static Amount ofPoundsPerSquareFoot(double pounds) {
    return Amount.of(
        Dimension.SURFACE_LOAD.unit(UnitSystem.US).toSi(pounds), Dimension.SURFACE_LOAD);
  }

  /** The mass in kg on every square metre that weighs so much. */
  public static double massPerArea(Amount load) {
    return load.si() / GRAVITY;
  }

  /** Whether a load is more than its limit. */
  public static boolean isOver(Amount load, Amount limit) {
    return load.si() > limit.si();
  }
}
