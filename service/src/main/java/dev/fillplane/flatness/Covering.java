package dev.fillplane.flatness;

/** What comes on top of the pour, and how flat it wants the floor. */
public enum Covering {
  WOOD_GLUED("Wood, glued down", 3, Covering.WOOD),
  WOOD_FLOATING("Wood or laminate, floating", 3, Covering.WOOD),
  TILE(
      "Tile, all edges shorter than 15 in (380 mm)",
      4,
      "ANSI A108.02, tile with all edges shorter than 15 in: 1/4 in in 10 ft"),
  TILE_LARGE(
      "Large tile, an edge of 15 in (380 mm) or more",
      2,
      "ANSI A108.02, tile with an edge of 15 in or more: 1/8 in in 10 ft"),
  RESILIENT("Resilient sheet or plank", 3, "ASTM F710: 3/16 in in 10 ft"),
  CARPET("Carpet", 4, "common practice, no source: 1/4 in in 10 ft");

  private static final String WOOD =
      "guideline of the wood flooring trade association: 3/16 in in 10 ft";

  private final String title;
  private final int sixteenths;
  private final String source;

  Covering(String title, int sixteenths, String source) {
    this.title = title;
    this.sixteenths = sixteenths;
    this.source = source;
  }

  /** Its name for people. */
  public String title() {
    return title;
  }

  /** The largest gap that it allows; the covering's own instructions come first. */
  public FlatnessLimit limit() {
    return FlatnessLimit.inTenFeet(sixteenths, source);
  }
}
