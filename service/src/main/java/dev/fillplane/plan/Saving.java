package dev.fillplane.plan;

import dev.fillplane.depth.GroundArea;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * What the humps of a floor cost in bags: grind these areas by up to this height and lower the
 * target as much.
 *
 * @param height that the target comes down by
 * @param bags that this saves, rounded down
 * @param area to grind
 * @param volume to grind off
 * @param minutes working time of one person
 * @param saves what the saved fill costs less what the grinding costs, at the caller's prices, if
 *     told; negative where grinding is dearer
 * @param areas to grind, the highest first
 */
public record Saving(
    @Measured(Dimension.HEIGHT) double height,
    int bags,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.TIME) double minutes,
    Optional<Money> saves,
    List<GroundArea> areas) {

  /** Copies the areas. */
  public Saving {
    areas = List.copyOf(areas);
  }
}
