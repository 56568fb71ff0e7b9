package dev.fillplane.target;

import dev.fillplane.room.Position;
import java.util.List;

/**
 * What limits the plane of some rooms.
 *
 * @param highs of the rooms
 * @param minimumDepth over the floor, after grinding
 * @param grindDepth most that may be ground off; 0 where nothing may
 * @param bands fixed heights and ceilings in the rooms or nearest to them
 * @param maximumSlope not negative; 0 for a level
 * @param level whether a level is wanted
 */
record Limits(
    HighPoints highs,
    double minimumDepth,
    double grindDepth,
    List<Band> bands,
    double maximumSlope,
    boolean level) {

  /** Heights nearer than this count as equal: a hundredth of what a reading can tell. */
  static final double TOUCH = 1e-6;

  /** Least height of the target over any high point: the rest of the minimum depth is ground. */
  double clearance() {
    return minimumDepth - grindDepth;
  }

  /** Centroid of the rooms. */
  Position centroid() {
    return highs.centroid();
  }

  /** The same without some of the bands. */
  Limits without(List<Band> some) {
    List<Band> rest = bands.stream().filter(band -> !some.contains(band)).toList();
    return new Limits(highs, minimumDepth, grindDepth, rest, maximumSlope, level);
  }
}
