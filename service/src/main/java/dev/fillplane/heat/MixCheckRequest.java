package dev.fillplane.heat;

import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;

/**
 * Temperatures of the parts of a mix.
 *
 * @param units the caller's units
 * @param powder cement or leveller
 * @param aggregate sand or stone; none in a neat leveller
 * @param water mix water, without the ice
 * @param ice ice that melts in the mix; none in a leveller
 * @param wanted the temperature that the mix shall have, if one is wanted
 * @param material whose working time holds
 */
public record MixCheckRequest(
    UnitSystem units,
    Portion powder,
    Optional<Portion> aggregate,
    Portion water,
    Optional<Ice> ice,
    Optional<Wanted> wanted,
    MaterialWish material) {

  /** Fills in what was left out. */
  public MixCheckRequest {
    material = material == null ? MaterialWish.usual() : material;
  }
}
