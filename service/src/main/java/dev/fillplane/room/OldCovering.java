package dev.fillplane.room;

/** What lies on the base, or lay there before it was bared; its glue may be left. */
public enum OldCovering {
  NONE,
  /** Vinyl, asphalt or linoleum, as sheet or tile, with its backing. */
  RESILIENT,
  TILE,
  WOOD,
  CARPET
}
