package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weather on site. What is not told is assumed and said in a warning.
 *
 * @param air air over the floor; 20 C
 * @param floor surface of the base; 2 K below the air
 * @param powder bags as they are opened; as the air
 * @param water mix water; 15 C
 * @param humidity relative humidity of the air, 0 to 1, if known
 * @param airspeed draught over the floor; 0
 * @param ventilated whether dust and vapour are carried off, if known
 * @param sun whether the sun shines on the floor; no
 */
public record Conditions(
    @Measured(Dimension.TEMPERATURE) Double air,
    @Measured(Dimension.TEMPERATURE) Double floor,
    @Measured(Dimension.TEMPERATURE) Double powder,
    @Measured(Dimension.TEMPERATURE) Double water,
    OptionalDouble humidity,
    @Measured(Dimension.AIRSPEED) Double airspeed,
    Optional<Boolean> ventilated,
    Boolean sun) {

  /** Fills in what was left out. */
  public Conditions {
    air = air == null ? 20.0 : air;
    sun = sun == null ? Boolean.FALSE : sun;
    floor = floor == null ? air - 2 + (sun ? 10 : 0) : floor;
    powder = powder == null ? air : powder;
    water = water == null ? 15.0 : water;
    airspeed = airspeed == null ? 0.0 : airspeed;
  }

  /** Nothing known. */
  public static Conditions unknown() {
    return new Conditions(
        null, null, null, null, OptionalDouble.empty(), null, Optional.empty(), null);
  }
}
