package dev.fillplane.heat;

import dev.fillplane.finding.Finding;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * What a mix comes to.
 *
 * @param mixTemperature as its parts meet, before the mixer warms it
 * @param workingTime at that temperature and the 2 K that mixing adds
 * @param needed what brings mixTemperature to the one wanted: of a leveller, ice that chills its
 *     water and is taken out again; of a concrete-like mix, ice in place of as much water. Left out
 *     where nothing is wanted or it cannot be had
 */
public record MixCheck(
    @Measured(Dimension.TEMPERATURE) double mixTemperature,
    @Measured(Dimension.TIME) double workingTime,
    Needed needed,
    List<Finding> warnings) {

  /** Copies the list. */
  public MixCheck {
    warnings = List.copyOf(warnings);
  }
}
