package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Whether the floor may be ground.
 *
 * @param allowed not unless told
 * @param maximumDepth most that may be ground off anywhere; 5 mm unless told
 * @param areaPerHour what one person grinds in an hour; 8 m2 unless told
 */
public record GrindWish(
    Boolean allowed,
    @Measured(Dimension.HEIGHT) Double maximumDepth,
    @Measured(Dimension.AREA) Double areaPerHour) {

  /** Deeper passes reach for the aggregate and the cover of the steel; our choice. */
  public static final double DEFAULT_MAXIMUM_DEPTH = 0.005;

  /** Area that one person grinds in an hour; common practice, no source. */
  public static final double DEFAULT_AREA_PER_HOUR = 8;

  /** Fills in what was left out. */
  public GrindWish {
    allowed = allowed != null && allowed;
    maximumDepth = maximumDepth == null ? DEFAULT_MAXIMUM_DEPTH : maximumDepth;
    areaPerHour = areaPerHour == null ? DEFAULT_AREA_PER_HOUR : areaPerHour;
  }

  /** Nothing is ground. */
  public static GrindWish none() {
    return new GrindWish(null, null, null);
  }

  /** How much may be ground off anywhere; 0 where grinding is not allowed. */
  public double depth() {
    return allowed ? maximumDepth : 0;
  }
}
