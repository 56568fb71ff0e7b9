package dev.fillplane.screed;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Tools on site; a screed of 3 m unless told. */
public record Equipment(@Measured(Dimension.PLAN) Double screedLength) {

  /** Fills in what was left out. */
  public Equipment {
    screedLength = screedLength == null ? 3.0 : screedLength;
  }
}
