package dev.fillplane.bay;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * What the features of a floor ask for before the pour.
 *
 * @param keepOpen what is taped off, formed round or carried through
 * @param crackLength of dormant cracks to fill
 * @param jointLength of moving joints to carry through
 * @param foamVolume to close the gaps that were told
 */
public record Preparation(
    List<KeptOpen> keepOpen,
    @Measured(Dimension.PLAN) double crackLength,
    @Measured(Dimension.PLAN) double jointLength,
    @Measured(Dimension.FILL) double foamVolume) {

  /** Copies the list. */
  public Preparation {
    keepOpen = List.copyOf(keepOpen);
  }

  /** Of a floor without features. */
  public static Preparation none() {
    return new Preparation(List.of(), 0, 0, 0);
  }
}
