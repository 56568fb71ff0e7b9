package dev.fillplane.surface;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** A floor laid through readings, with all that a plan asks of it. Immutable and safe to share. */
public interface FittedSurface extends Surface {

  /** How it was found; worked out at each call. */
  SurfaceSummary summary();

  /**
   * Each spot against the others, in the order of the spots; worked out at each call. Of many spots
   * only those that stand out are told.
   */
  LeaveOneOut leaveOneOut();

  /**
   * Equally likely floors about this one.
   *
   * @param rooms at least one
   * @param count how many; at least 1
   * @param seed the same seed draws the same floors
   */
  FloorResiduals realisations(List<Polygon> rooms, int count, long seed);
}
