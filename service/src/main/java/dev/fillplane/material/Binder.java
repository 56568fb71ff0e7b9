package dev.fillplane.material;

/** What makes the underlayment set. */
public enum Binder {
  CEMENT,
  GYPSUM
}
