package dev.fillplane.plan;

import dev.fillplane.heat.Conditions;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pour in bare numbers, without a survey: a rectangle of even depth.
 *
 * @param units the caller's units
 * @param volume what is poured
 * @param frontWidth width of the floor across the pour, which each ribbon runs along
 * @param depth how deep it is poured
 * @param crew who pours; the usual one unless told
 * @param material the usual one unless told
 * @param conditions the day; a usual one unless told
 * @param workingTime on this site, in place of that of the sheet
 * @param healingTime on this site, in place of that of the sheet
 */
public record PourCheckRequest(
    UnitSystem units,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.PLAN) double frontWidth,
    @Measured(Dimension.HEIGHT) double depth,
    Crew crew,
    MaterialWish material,
    Optional<Conditions> conditions,
    @Measured(Dimension.TIME) OptionalDouble workingTime,
    @Measured(Dimension.TIME) OptionalDouble healingTime) {

  /** Fills in what was left out. */
  public PourCheckRequest {
    crew = crew == null ? Crew.usual() : crew;
    material = material == null ? MaterialWish.usual() : material;
  }

  /** Length of the floor along the pour. */
  double length() {
    return volume / (depth * frontWidth);
  }
}
