package dev.fillplane.pour;

/** What a crew or one of its people waits for. */
public enum Stage {
  /** The mixers. */
  MIXING,
  /** Hands. */
  PEOPLE,
  /** An empty barrel. */
  BARRELS,
  /** The tap. */
  WATER,
  /** The pump. */
  PUMP,
  /** The end of a break, or of setting up for the next bay. */
  BREAK
}
