package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds the plane of the finished pour.
 *
 * <ul>
 *   <li><em>Level</em>: the highest of the mean floor and of the readings in the rooms, with the
 *       minimum depth over it. The lowest level plane there is, hence of least fill.
 *   <li><em>Plane</em>: of all planes with the minimum depth everywhere and no steeper than wished,
 *       the lowest at the centroid of the rooms. Nowhere being below the floor it fills its height
 *       there times the area, so it is the plane of least fill ({@link LeastFillPlane}).
 *   <li><em>Given</em>: as stated, or a level with an elevation; only looked at.
 * </ul>
 *
 * Ceilings must not be passed. Slopes above 2 mm/m are odd and above 5 mm/m refused: common
 * practice, no source.
 */
public final class TargetFinder {

  /** Slope above which a leveller is hard to keep in its plane; common practice, no source. */
  public static final double STEEP = 0.002;

  /** Slope above which a leveller does not stay; common practice, no source. */
  public static final double TOO_STEEP = 0.005;

  /** Slopes nearer than this count as equal. */
  private static final double SLOPE_TOUCH = 1e-9;

  private TargetFinder() {}

  /**
   * Finds the target. Where a finding is an error the answer is only the nearest that could be
   * made.
   *
   * @param minimumDepth least depth everywhere; not negative
   * @param coveringThickness covering with its adhesive; wanted where a ceiling is of the finish
   * @param place of the wish
   */
  public static FoundTarget find(
      TargetWish wish,
      double minimumDepth,
      HighPoints highs,
      OptionalDouble coveringThickness,
      Place place,
      Findings findings) {
    Limits limits = Limits.of(wish, minimumDepth, highs, coveringThickness, place, findings);
    if (wish.elevation().isPresent() && wish.shape() != TargetShape.PLANE) {
      return given(wish, limits, place, findings);
    }
    if (wish.shape() == TargetShape.GIVEN) {
      findings.error("elevation-needed", place.at("elevation"));
    }
    if (wish.shape() == TargetShape.PLANE) {
      if (wish.elevation().isPresent()) {
        findings.warning("elevation-unused", place.at("elevation"));
      }
      Optional<FoundTarget> found = LeastFillPlane.find(limits, place, findings);
      if (found.isPresent()) {
        checkSlope(found.get().plane(), place.at("maximumSlope"), findings);
        return found.get();
      }
      findings.warning("plane-not-found", place.at("shape"));
    }
    return level(limits, place, findings);
  }

  private static FoundTarget level(Limits limits, Place place, Findings findings) {
    HighPoints highs = limits.highs();
    int highest = highs.highestOver(Plane.level(0));
    Plane plane = Plane.level(highs.elevation(highest) + limits.minimumDepth());
    for (Limits.Cap cap : limits.ceilings()) {
      if (plane.elevation() > cap.elevation() + Limits.TOUCH) {
        CeilingError.note(
            cap, plane.elevation() - cap.elevation(), highs, highest, place, findings);
      }
    }
    return new FoundTarget(TargetShape.LEVEL, plane, Bounds.of(plane, limits));
  }

  private static FoundTarget given(TargetWish wish, Limits limits, Place place, Findings findings) {
    Plane plane = new Plane(wish.elevation().getAsDouble(), wish.slopeX(), wish.slopeY());
    checkSlope(plane, place.at(wish.slopeX() != 0 ? "slopeX" : "slopeY"), findings);
    for (Limits.Cap cap : limits.ceilings()) {
      double by = plane.at(cap.x(), cap.y()) - cap.elevation();
      if (by > Limits.TOUCH) {
        Amount amount = Amount.of(by, Dimension.HEIGHT);
        findings.error("target-above-ceiling", place.at("ceiling").at(cap.index()), "by", amount);
      }
    }
    GivenCheck.look(plane, limits, place.at("elevation"), findings);
    return new FoundTarget(TargetShape.GIVEN, plane, List.of());
  }

  private static void checkSlope(Plane plane, Place place, Findings findings) {
    Amount slope = Amount.of(plane.slope(), Dimension.SLOPE);
    if (plane.slope() > TOO_STEEP + SLOPE_TOUCH) {
      Amount limit = Amount.of(TOO_STEEP, Dimension.SLOPE);
      findings.error("slope-too-steep", place, "slope", slope, "limit", limit);
    } else if (plane.slope() > STEEP + SLOPE_TOUCH) {
      Amount limit = Amount.of(STEEP, Dimension.SLOPE);
      findings.warning("slope-steep", place, "slope", slope, "limit", limit);
    }
  }
}
