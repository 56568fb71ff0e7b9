package dev.fillplane.flatness;

/** What comes on top of the pour, and how flat it wants the floor. */
public enum Covering {
  WOOD_GLUED(3, Covering.WOOD),
  WOOD_FLOATING(3, Covering.WOOD),
  TILE(4, "ANSI A108.02, tile with all edges shorter than 15 in: 1/4 in in 10 ft"),
  TILE_LARGE(2, "ANSI A108.02, tile with an edge of 15 in or more: 1/8 in in 10 ft"),
  RESILIENT(3, "ASTM F710: 3/16 in in 10 ft"),
  CARPET(4, "common practice, no source: 1/4 in in 10 ft");

  private static final String WOOD =
      "guideline of the wood flooring trade association: 3/16 in in 10 ft";

  private final FlatnessLimit limit;

  Covering(int sixteenths, String source) {
    limit = FlatnessLimit.inTenFeet(sixteenths, source);
  }

  /** The largest gap that it allows; the covering's own instructions come first. */
  public FlatnessLimit limit() {
    return limit;
  }
}
