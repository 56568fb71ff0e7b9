package dev.fillplane.plan;

/** The ways that every plan compares, the least work first. */
public enum OptionName {
  /** Lay the covering on the floor as it is. */
  NO_POUR,
  /** Grind the humps, patch the hollows. */
  GRIND_AND_PATCH,
  /** Pour to the plane of least fill. */
  FLAT,
  /** Pour to a level plane. */
  LEVEL
}
