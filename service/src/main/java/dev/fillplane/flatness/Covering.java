package dev.fillplane.flatness;

/** What comes on top of the pour, and how flat it wants the floor. */
public enum Covering {
  WOOD_GLUED("Wood, glued down", "wood-glued"),
  WOOD_FLOATING("Wood or laminate, floating", "wood-floating"),
  TILE("Tile, all edges shorter than 15 in (380 mm)", "tile-small"),
  TILE_LARGE("Large tile, an edge of 15 in (380 mm) or more", "tile-large"),
  RESILIENT("Resilient sheet or plank", "astm-f710"),
  CARPET("Carpet", "carpet");

  private final String title;
  private final String tolerance;

  Covering(String title, String tolerance) {
    this.title = title;
    this.tolerance = tolerance;
  }

  /** Its name for people. */
  public String title() {
    return title;
  }

  /** Whether it breaks where the floor bends. */
  public boolean isTile() {
    return this == TILE || this == TILE_LARGE;
  }

  /** What it asks for; the covering's own instructions come first. */
  public Tolerance tolerance() {
    return Tolerances.find(tolerance).orElseThrow();
  }

  /** The main figure of its tolerance: the gap under the longest of its edges. */
  public FlatnessLimit limit() {
    return tolerance().limit().orElseThrow();
  }
}
