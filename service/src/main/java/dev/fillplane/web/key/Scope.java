package dev.fillplane.web.key;

/** What a key allows. */
public enum Scope {
  /** Every calculation and every catalogue. */
  CALCULATE,
  /** Jobs, and every catalogue. */
  JOBS,
  /** The light calculations and every catalogue, from pages of the origins of the key. */
  BROWSER
}
