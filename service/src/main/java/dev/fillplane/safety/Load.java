package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;

/** Weight on an area. */
final class Load {

  private static final double GRAVITY = 9.80665;

  private Load() {}

  /** Of {@code mass} on every square metre. */
  static Amount ofMassPerArea(double mass) {
    return Amount.of(mass * GRAVITY, Dimension.SURFACE_LOAD);
  }

  static Amount ofPoundsPerSquareFoot(double pounds) {
    return Amount.of(
        Dimension.SURFACE_LOAD.unit(UnitSystem.US).toSi(pounds), Dimension.SURFACE_LOAD);
  }

  static boolean isOver(Amount load, Amount limit) {
    return load.si() > limit.si();
  }
}
