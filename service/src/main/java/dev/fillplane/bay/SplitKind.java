package dev.fillplane.bay;

/** Where a dam may divide a bay. */
public enum SplitKind {
  /** Where the floor is narrow, from an inner corner to the wall across. */
  NECK,
  /** A passage up to 1.5 m wide between two inner corners. */
  DOORWAY,
  /** Half way, square to the travel: two shorter pours. */
  ACROSS,
  /** Along the travel: fronts half as long. */
  ALONG
}
