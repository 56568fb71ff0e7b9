package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.Front;
import dev.fillplane.bay.Strip;
import java.util.ArrayList;
import java.util.List;

/**
 * Ages of edges by walking along every front in steps of a millimetre, from nothing but the batch
 * list of an answer and the strips: slow, plain, and by other means than the plan. Bits under 10 mm
 * do not count.
 */
final class PlainAges {

  private static final double STEP = 0.001;
  private static final double SHORT = 0.010;

  private final List<Batch> batches;
  private final List<Strip> strips;
  private final double batch;
  private final double[] before;

  /** Of one bay; {@code batch} is the volume of a full batch. */
  PlainAges(Pour pour, Bay bay, double batch) {
    batches = pour.batches().stream().filter(b -> b.bay().equals(bay.id())).toList();
    strips = bay.strips();
    this.batch = batch;
    before = new double[strips.size() + 1];
    for (int i = 0; i < strips.size(); i++) {
      before[i + 1] = before[i] + strips.get(i).fill().volume();
    }
  }

  /** Age of the oldest edge of a strip. */
  double ofStrip(int index) {
    double oldest = 0;
    for (Front front : strips.get(index).fronts()) {
      oldest = Math.max(oldest, ofFront(index, front));
    }
    int previous = -1;
    for (int batchIndex : batchesAlong(index)) {
      if (previous >= 0 && batchIndex != previous) {
        oldest = Math.max(oldest, age(previous, batchIndex));
      }
      previous = batchIndex;
    }
    return oldest;
  }

  private double ofFront(int index, Front front) {
    int later = front.later() - 1;
    if (strips.get(index).fill().volume() <= 0 || strips.get(later).fill().volume() <= 0) {
      return 0;
    }
    double oldest = 0;
    double run = 0;
    double last = -1;
    for (double at = front.from() + STEP / 2; at < front.to(); at += STEP) {
      double age = age(batchAt(index, at), batchAt(later, at));
      run = age == last ? run + STEP : STEP;
      last = age;
      oldest = run > SHORT + STEP / 2 ? Math.max(oldest, age) : oldest;
    }
    return oldest;
  }

  private List<Integer> batchesAlong(int index) {
    List<Integer> along = new ArrayList<>();
    Strip strip = strips.get(index);
    for (double at = strip.from() + STEP / 2; at < strip.to(); at += STEP) {
      along.add(batchAt(index, at));
    }
    return along;
  }

  private int batchAt(int index, double at) {
    Strip strip = strips.get(index);
    double share = (at - strip.from()) / (strip.to() - strip.from());
    double poured = before[index] + share * (before[index + 1] - before[index]);
    return Math.min(batches.size() - 1, (int) (poured / batch));
  }

  private double age(int made, int met) {
    return batches.get(met).placed() - batches.get(made).firstWater();
  }
}
