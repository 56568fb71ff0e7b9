package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The plane that the finished pour should lie in, as wished.
 *
 * @param shape level unless told
 * @param elevation elevation at the plan origin; makes a level target a given one
 * @param slopeX rise along x, for a given target; 0 unless told
 * @param slopeY rise along y, for a given target; 0 unless told
 * @param minimumDepth least depth everywhere; the sheet's and the substrate's minimum unless told
 * @param maximumSlope steepest slope of a plane that is found; 2 mm/m unless told
 * @param sharing which rooms lie in one plane; all unless told, and always those of a given target
 * @param grind whether the floor may be ground; not unless told
 * @param prices of fill and of grinding, if told
 * @param fixed heights that have to be met
 * @param ceiling heights that must not be passed
 */
public record TargetWish(
    TargetShape shape,
    @Measured(Dimension.HEIGHT) OptionalDouble elevation,
    @Measured(Dimension.SLOPE) Double slopeX,
    @Measured(Dimension.SLOPE) Double slopeY,
    @Measured(Dimension.HEIGHT) OptionalDouble minimumDepth,
    @Measured(Dimension.SLOPE) Double maximumSlope,
    Sharing sharing,
    GrindWish grind,
    Optional<Prices> prices,
    List<FixedHeight> fixed,
    List<Ceiling> ceiling) {

  /** Steepest slope at which a leveller keeps a near-constant depth; common practice, no source. */
  public static final double DEFAULT_MAXIMUM_SLOPE = 0.002;

  /** Fills in what was left out. */
  public TargetWish {
    shape = shape == null ? TargetShape.LEVEL : shape;
    slopeX = slopeX == null ? 0 : slopeX;
    slopeY = slopeY == null ? 0 : slopeY;
    maximumSlope = maximumSlope == null ? DEFAULT_MAXIMUM_SLOPE : maximumSlope;
    sharing = sharing == null ? Sharing.ONE : sharing;
    grind = grind == null ? GrindWish.none() : grind;
    fixed = fixed == null ? List.of() : List.copyOf(fixed);
    ceiling = ceiling == null ? List.of() : List.copyOf(ceiling);
  }

  /** A level target with everything left to the service. */
  public static TargetWish usual() {
    return plain(null, null, null);
  }

  /** A target of which nothing but the shape, the slope limit and the sharing is wished. */
  public static TargetWish plain(TargetShape shape, Double maximumSlope, Sharing sharing) {
    return new TargetWish(
        shape,
        OptionalDouble.empty(),
        null,
        null,
        OptionalDouble.empty(),
        maximumSlope,
        sharing,
        null,
        Optional.empty(),
        null,
        null);
  }

  /** The same with nothing ground. */
  public TargetWish withoutGrinding() {
    GrindWish none = new GrindWish(false, grind.maximumDepth(), grind.areaPerHour());
    return new TargetWish(
        shape,
        elevation,
        slopeX,
        slopeY,
        minimumDepth,
        maximumSlope,
        sharing,
        none,
        prices,
        fixed,
        ceiling);
  }
}
