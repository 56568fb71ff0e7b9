package dev.fillplane.supply;

import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Absorbency;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A layer that nobody has surveyed. Exactly one of thickness and thicknessRange is told.
 *
 * @param units the caller's units
 * @param area what is covered
 * @param thickness its mean thickness
 * @param thicknessRange between which values its mean thickness lies, all equally likely
 * @param material the usual one unless told
 * @param absorbency how thirsty the base is; normal unless told
 * @param confidence chance with which the bags ordered suffice; 0.9
 */
public record BagCountRequest(
    UnitSystem units,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.HEIGHT) OptionalDouble thickness,
    Optional<ThicknessRange> thicknessRange,
    MaterialWish material,
    Absorbency absorbency,
    Double confidence) {

  /** Fills in what was left out. */
  public BagCountRequest {
    material = material == null ? MaterialWish.usual() : material;
    absorbency = absorbency == null ? Absorbency.NORMAL : absorbency;
    confidence = confidence == null ? 0.9 : confidence;
  }
}
