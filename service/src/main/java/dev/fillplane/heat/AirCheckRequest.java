package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import java.util.OptionalDouble;

/**
 * The air over a floor.
 *
 * @param units the caller's units
 * @param air temperature of the air
 * @param humidity relative, 0 to 1
 * @param surface temperature of the fresh mix
 * @param substrate temperature of the base; as the surface
 * @param airspeed over the floor; still air, with a warning
 */
public record AirCheckRequest(
    UnitSystem units,
    @Measured(Dimension.TEMPERATURE) double air,
    double humidity,
    @Measured(Dimension.TEMPERATURE) double surface,
    @Measured(Dimension.TEMPERATURE) OptionalDouble substrate,
    @Measured(Dimension.AIRSPEED) OptionalDouble airspeed) {}
