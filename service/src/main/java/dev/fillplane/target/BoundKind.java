package dev.fillplane.target;

/** Kinds of limit on a target. */
public enum BoundKind {
  /** A high spot of the floor with its minimum depth over it. */
  MINIMUM_DEPTH,
  /** A high spot of the floor that is ground as deep as allowed. */
  GRIND_DEPTH,
  /** A height that must be met. */
  FIXED,
  /** A height that must not be passed. */
  CEILING,
  /** The steepest slope allowed. */
  SLOPE
}
