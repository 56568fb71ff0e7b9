package dev.fillplane.target;

/**
 * A half space of planes: {@code level * elevation + alongX * riseX + alongY * riseY >= value}.
 *
 * @param cause what it keeps
 * @param index which high point or band; -1 where there is no such thing
 * @param loose whether a miss may be allowed for
 */
record Cut(
    Cause cause,
    int index,
    double level,
    double alongX,
    double alongY,
    double value,
    boolean loose) {

  /** What a half space keeps. */
  enum Cause {
    SLOPE,
    HIGH_POINT,
    BAND
  }

  /** By how much a plane lies within. */
  double spare(double[] plane) {
    return level * plane[0] + alongX * plane[1] + alongY * plane[2] - value;
  }
}
