package dev.fillplane.render;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** What a depth map may show beside its rooms, openings, high and low spot. */
public enum Layer {
  /** Depths in colours. */
  DEPTH,
  /** Lines of equal depth. */
  CONTOURS,
  /** Readings and probes; suspects ringed. */
  READINGS,
  /** Ribbons with their order and the direction of travel. */
  RIBBONS,
  /** Depth pins and screed rails. */
  GUIDES,
  /** Places where one more reading would help most. */
  NEXT,
  /** Areas to grind. */
  GROUND,
  /** Deep pockets and lower lifts, that are poured first. */
  PASSES,
  /** Where the floor is unsure. */
  DEVIATION,
  /** Where a straightedge shows too large a gap on the floor as it is. */
  GAPS;

  /** What a map shows unless told: all but the deviation and the gaps. */
  public static final Set<Layer> USUAL =
      Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(DEVIATION, GAPS)));
}
