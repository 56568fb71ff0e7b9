package dev.fillplane.room;

/** What is poured on. */
public enum Substrate {
  CONCRETE,
  SCREED,
  TILE,
  WOOD,
  GYPSUM
}
