package dev.fillplane.screed;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Tools on site.
 *
 * @param screedLength length of the screed; 3 m
 */
public record Equipment(@Measured(Dimension.PLAN) Double screedLength) {

  /** Fills in what was left out. */
  public Equipment {
    screedLength = screedLength == null ? 3.0 : screedLength;
  }

  /** A screed of 3 m. */
  public static Equipment usual() {
    return new Equipment(null);
  }
}
