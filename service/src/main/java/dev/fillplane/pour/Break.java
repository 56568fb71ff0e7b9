package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A break of the whole crew. No batch is begun in it; what is mixed is placed, raked and rolled
 * first.
 *
 * @param at when it begins, from the start of the work
 * @param length how long no batch is begun
 */
public record Break(@Measured(Dimension.TIME) double at, @Measured(Dimension.TIME) double length) {

  double end() {
    return at + length;
  }
}
