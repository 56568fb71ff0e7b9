package dev.fillplane.target;

/** What plane is wanted. */
public enum TargetShape {
  /** The lowest level plane that keeps the minimum depth. */
  LEVEL,
  /** The plane of least fill that keeps the minimum depth and the slope limit. */
  PLANE,
  /** The plane that the caller states. */
  GIVEN
}
