package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.Strip;
import java.util.ArrayList;
import java.util.List;

/**
 * A bay with the batches that fill it.
 *
 * @param bay the bay
 * @param strips its strips with the batches in them, which count from 0 in the bay
 * @param batch volume of a full batch
 * @param firstBatch batches of the floor before it
 * @param firstRibbon ribbons of the floor before it
 */
record LaidBay(Bay bay, List<LaidStrip> strips, double batch, int firstBatch, int firstRibbon) {

  static LaidBay of(Bay bay, double batch, int firstBatch, int firstRibbon) {
    List<LaidStrip> strips = new ArrayList<>();
    double poured = 0;
    for (Strip strip : bay.strips()) {
      strips.add(new LaidStrip(strip, poured, batch));
      poured += strip.fill().volume();
    }
    return new LaidBay(bay, strips, batch, firstBatch, firstRibbon);
  }

  int batches() {
    return LaidStrip.batches(volume(), batch);
  }

  private double volume() {
    return bay.fill().volume();
  }

  /** What a batch puts on the floor; the last one may be smaller. */
  double volume(int batchInBay) {
    return Math.max(0, Math.min(batch, volume() - batchInBay * batch));
  }

  /** The first of its strips that a batch reaches into; the last if none does. */
  int stripOf(int batchInBay) {
    int strip = 0;
    while (strip < strips.size() - 1 && strips.get(strip).last() < batchInBay) {
      strip++;
    }
    return strip;
  }

  /** Floor that each of its batches covers. */
  double[] areas() {
    double[] areas = new double[batches()];
    for (LaidStrip strip : strips) {
      for (int i = strip.first(); i < strip.first() + strip.count() && i < areas.length; i++) {
        areas[i] += strip.areaOf(i);
      }
    }
    return areas;
  }
}
