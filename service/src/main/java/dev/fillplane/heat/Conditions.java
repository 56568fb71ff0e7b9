package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weather on site and the moisture of the slab as the caller tells them. What is not told is
 * assumed by {@link #site()}.
 *
 * @param air air over the floor; 20 C
 * @param floor surface of the base; 2 K below the air, 10 K more in the sun
 * @param powder bags as they are opened; as the air
 * @param water mix water; 15 C
 * @param humidity relative humidity of the air, 0 to 1, if known
 * @param airspeed draught over the floor; 0
 * @param ventilated whether dust and vapour are carried off, if known
 * @param sun whether the sun shines on the floor; no
 * @param mixingHeat what the mixer adds to the mix; 2 K
 * @param slab moisture of the slab; unknown
 */
public record Conditions(
    @Measured(Dimension.TEMPERATURE) OptionalDouble air,
    @Measured(Dimension.TEMPERATURE) OptionalDouble floor,
    @Measured(Dimension.TEMPERATURE) OptionalDouble powder,
    @Measured(Dimension.TEMPERATURE) OptionalDouble water,
    OptionalDouble humidity,
    @Measured(Dimension.AIRSPEED) OptionalDouble airspeed,
    Optional<Boolean> ventilated,
    Boolean sun,
    @Measured(Dimension.TEMPERATURE_DIFFERENCE) OptionalDouble mixingHeat,
    Slab slab) {

  /** Temperature of the air where none is told. */
  public static final double USUAL_AIR = 20;

  /** Temperature of the mix water where none is told. */
  public static final double USUAL_WATER = 15;

  private static final double FLOOR_COOLER = 2;
  private static final double SUN_WARMS = 10;

  /** Fills in what was left out. */
  public Conditions {
    sun = sun == null ? Boolean.FALSE : sun;
    slab = slab == null ? Slab.unknown() : slab;
  }

  /** Nothing told. */
  public static Conditions unknown() {
    OptionalDouble none = OptionalDouble.empty();
    return new Conditions(none, none, none, none, none, none, Optional.empty(), null, none, null);
  }

  /** The same with every gap filled. */
  public Site site() {
    double overFloor = air.orElse(USUAL_AIR);
    return new Site(
        overFloor,
        floor.orElse(overFloor - FLOOR_COOLER + (sun ? SUN_WARMS : 0)),
        powder.orElse(overFloor),
        water.orElse(USUAL_WATER),
        humidity,
        airspeed.orElse(0),
        ventilated,
        mixingHeat.orElse(WorkingTime.MIXING_HEAT));
  }

  /** The temperatures that were not told, in words. */
  public List<String> assumed() {
    List<String> names = new ArrayList<>();
    addIfEmpty(air, "air", names);
    addIfEmpty(floor, "floor", names);
    addIfEmpty(powder, "bags", names);
    addIfEmpty(water, "water", names);
    return names;
  }

  private static void addIfEmpty(OptionalDouble told, String name, List<String> names) {
    if (told.isEmpty()) {
      names.add(name);
    }
  }
}
