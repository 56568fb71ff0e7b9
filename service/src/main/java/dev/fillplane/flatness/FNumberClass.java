package dev.fillplane.flatness;

/**
 * F-numbers that a class of floor asks for.
 *
 * @param ff overall flatness
 * @param fl overall levelness
 * @param localFf least flatness of any part, 3/5 of the overall
 * @param localFl least levelness of any part, 3/5 of the overall
 */
public record FNumberClass(double ff, double fl, double localFf, double localFl) {

  private static final double LOCAL = 0.6;

  static FNumberClass overall(double ff, double fl) {
    return new FNumberClass(ff, fl, LOCAL * ff, LOCAL * fl);
  }
}
