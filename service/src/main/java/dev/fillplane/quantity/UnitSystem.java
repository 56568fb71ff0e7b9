package dev.fillplane.quantity;

/** The unit system that a request asks for; its answer uses the same. */
public enum UnitSystem {
  METRIC,
  US
}
