package dev.fillplane.bench;

import dev.fillplane.surface.Surface;

/** A floor without any height. */
final class Level implements Surface {

  @Override
  public double elevation(double x, double y) {
    return 0;
  }

  @Override
  public double deviation(double x, double y) {
    return 0;
  }
}
