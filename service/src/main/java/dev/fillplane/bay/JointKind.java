package dev.fillplane.bay;

/** Why the pour ends at a planned joint. */
public enum JointKind {
  /** A stop in a doorway: every room is poured by itself. */
  DOORWAY,
  /** A moving joint of the base is carried through. */
  MOVING_JOINT,
  /** A dam divides what would be too much to pour in one go. */
  DAM
}
