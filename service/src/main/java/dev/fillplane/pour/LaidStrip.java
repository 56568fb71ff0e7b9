package dev.fillplane.pour;

import dev.fillplane.bay.Strip;
import java.util.ArrayList;
import java.util.List;

/**
 * A strip with the batches that fill it. The pour goes from its right end to its left, and what is
 * poured is taken as even over its length.
 *
 * @param strip the strip
 * @param start volume poured in the bay before it
 * @param batch volume of a batch
 */
record LaidStrip(Strip strip, double start, double batch) {

  // A billionth of a batch is rounding, not a reason for one more.
  private static final double ROUNDING = 1e-9;

  /** Batches that {@code volume} needs. */
  static int batches(double volume, double batch) {
    return (int) Math.ceil(volume / batch - ROUNDING);
  }

  boolean poured() {
    return volume() > ROUNDING * batch;
  }

  int first() {
    return (int) Math.floor(start / batch + ROUNDING);
  }

  int last() {
    return Math.max(first(), batches(start + volume(), batch) - 1);
  }

  int count() {
    return poured() ? last() - first() + 1 : 0;
  }

  /** What a batch covers of the strip. */
  double areaOf(int index) {
    double from = Math.max(start, index * batch);
    double to = Math.min(start + volume(), (index + 1) * batch);
    return Math.max(0, to - from) / volume() * strip.fill().area();
  }

  /** The batch that makes the strip at a place across the travel. */
  int batchAt(double across) {
    double share = (across - strip.from()) / strip.length();
    int index = (int) Math.floor((start + share * volume()) / batch);
    return Math.max(first(), Math.min(last(), index));
  }

  /** Where one batch ends and the next begins, across the travel. */
  List<Double> seams() {
    List<Double> seams = new ArrayList<>();
    for (int next = first() + 1; poured() && next <= last(); next++) {
      seams.add(strip.from() + (next * batch - start) / volume() * strip.length());
    }
    return seams;
  }

  private double volume() {
    return strip.fill().volume();
  }
}
