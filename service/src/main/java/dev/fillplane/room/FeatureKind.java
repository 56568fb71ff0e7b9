package dev.fillplane.room;

/** What there is in a floor that the pour must heed. */
public enum FeatureKind {
  /** A joint of the base that moves; carried through the pour, never bridged. */
  MOVING_JOINT("moving joint", true),
  /** A dormant crack; filled before priming. */
  CRACK("crack", true),
  /** A gap that the pour would run into; closed with foam. */
  GAP("gap", true),
  /** Stays open. */
  DRAIN("drain", false),
  /** A floor box; stays open. */
  BOX("box", false),
  /** Of a closet or a pipe; stays open. */
  FLANGE("flange", false),
  /** A heating or other cable, told by its run or by where it comes out of the floor. */
  CABLE("cable", true);

  private final String title;
  private final boolean line;

  FeatureKind(String title, boolean line) {
    this.title = title;
    this.line = line;
  }

  /** What people call it. */
  public String title() {
    return title;
  }

  /** Whether it is told by its two ends, else by its middle. */
  public boolean isLine() {
    return line;
  }

  /** Whether the pour leaves it out. */
  public boolean staysOpen() {
    return !line;
  }
}
