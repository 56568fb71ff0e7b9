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

  /** Whether a load is more than its limit. */
  public static boolean isOver(Amount load, Amount limit) {
    return load.si() > limit.si();
  }
}
