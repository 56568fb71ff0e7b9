package dev.fillplane.flatness;

/** What comes on top of the pour. */
public enum Covering {
  WOOD_GLUED,
  WOOD_FLOATING,
  TILE,
  TILE_LARGE,
  RESILIENT,
  CARPET
}
