package dev.fillplane.heat;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weather on site with everything told or assumed.
 *
 * @param air temperature of the air over the floor
 * @param floor temperature of the surface of the base
 * @param powder temperature of the bags as they are opened
 * @param water temperature of the mix water
 * @param humidity relative humidity of the air, 0 to 1, if known
 * @param airspeed draught over the floor
 * @param ventilated whether dust and vapour are carried off, if known
 * @param mixingHeat what the mixer adds to the temperature of the mix
 */
public record Site(
    double air,
    double floor,
    double powder,
    double water,
    OptionalDouble humidity,
    double airspeed,
    Optional<Boolean> ventilated,
    double mixingHeat) {}
