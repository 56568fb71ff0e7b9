package dev.fillplane.supply;

/** What the number of bags is unsure about. */
public enum DriverSource {
  /** The floor between the readings and their error. */
  SURVEY,
  /** The height at which the pour is placed. */
  PLACING,
  /** What the texture of the base swallows. */
  TEXTURE,
  /** What a lot yields. */
  YIELD,
  /** Spilt, left over, left in the barrel. */
  WASTE
}
