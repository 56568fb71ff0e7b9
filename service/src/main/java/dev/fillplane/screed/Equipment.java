package dev.fillplane.screed;

import dev.fillplane.bay.Spreading;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Tools on site.
 *
 * @param screedLength length of the screed; 3 m
 * @param spreading what the mix is spread from; buckets
 */
public record Equipment(@Measured(Dimension.PLAN) Double screedLength, Spreading spreading) {

  /** Fills in what was left out. */
  public Equipment {
    screedLength = screedLength == null ? 3.0 : screedLength;
    spreading = spreading == null ? Spreading.BUCKET : spreading;
  }

  /** A screed of 3 m, buckets. */
  public static Equipment usual() {
    return new Equipment(null, null);
  }
}
