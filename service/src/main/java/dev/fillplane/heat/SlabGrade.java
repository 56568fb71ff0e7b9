package dev.fillplane.heat;

/** Where a slab lies against the ground. */
public enum SlabGrade {
  /** Below the ground beside it. */
  BELOW,
  /** On the ground. */
  ON,
  /** Above the ground, with air below. */
  ABOVE
}
