package dev.fillplane.room;

/** How thirsty the base is, by a drop of water (ASTM F3191 describes such a test). */
public enum Absorbency {
  LOW,
  NORMAL,
  HIGH
}
