package dev.fillplane.flatness;

/** How many of the figures of a tolerance a floor must keep. */
public enum Enough {
  /** Every one. */
  ALL,
  /** Any one; published with an "or" between them. */
  ONE
}
