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
 * @param prices of fill and of grinding, if told
 * @param ceiling heights that must not be passed
 */
public record TargetWish(
    TargetShape shape,
    @Measured(Dimension.HEIGHT) OptionalDouble elevation,
    @Measured(Dimension.SLOPE) Double slopeX,
    @Measured(Dimension.SLOPE) Double slopeY,
    @Measured(Dimension.HEIGHT) OptionalDouble minimumDepth,
    @Measured(Dimension.SLOPE) Double maximumSlope,
    Optional<Prices> prices,
    List<Ceiling> ceiling) {

  /** Steepest slope at which a leveller keeps a near-constant depth; common practice, no source. */
  public static final double DEFAULT_MAXIMUM_SLOPE = 0.002;

  /** Fills in what was left out. */
  public TargetWish {
    shape = shape == null ? TargetShape.LEVEL : shape;
    slopeX = slopeX == null ? 0 : slopeX;
    slopeY = slopeY == null ? 0 : slopeY;
    maximumSlope = maximumSlope == null ? DEFAULT_MAXIMUM_SLOPE : maximumSlope;
    ceiling = ceiling == null ? List.of() : List.copyOf(ceiling);
  }

  /** A level target with everything left to the service. */
  public static TargetWish usual() {
    return new TargetWish(
        null,
        OptionalDouble.empty(),
        null,
        null,
        OptionalDouble.empty(),
        null,
        Optional.empty(),
        null);
  }
}
