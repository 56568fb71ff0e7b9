package dev.fillplane.room;

/** What a gap in a wall is. */
public enum OpeningKind {
  /** People and bags leave the floor here. */
  EXIT,
  /** Leads to another room. */
  DOORWAY,
  /** The floor goes on at a height of its own. */
  THRESHOLD
}
