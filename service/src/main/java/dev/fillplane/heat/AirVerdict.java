package dev.fillplane.heat;

/** Whether the air lets a thin leveller be poured. */
public enum AirVerdict {
  /** The base stays dry, and the surface even where evaporation is underestimated. */
  HOLDS,
  /** The base stays dry; evaporation may pass the caution, but not the stop. */
  TIGHT,
  /** The base may sweat, or water leaves faster than the stop. */
  BREAKS
}
