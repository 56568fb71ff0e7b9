package dev.fillplane.pour;

/** How much a change asks of a crew. */
public enum Effort {
  /** What is done on site: less than another pair of hands. */
  SMALL,
  /** Another material, or another day: more than another pair of hands. */
  LARGE
}
