package dev.fillplane.surface;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Some of many spots, spread over the floor: each next one is the farthest from those before it
 * (farthest-point sampling). The choice stays the same when the plan is turned or moved: places
 * that are equally far are told apart by their distance from the centre, then by their elevation.
 */
final class SpreadChoice {

  /** Part of a length by which two of them may differ and still count as equal. */
  private static final double EQUAL = 1e-9;

  private final LocalSpots spots;
  private final double[] fromCentre;
  private final double[] fromChosen;

  private SpreadChoice(LocalSpots spots) {
    this.spots = spots;
    this.fromCentre = new double[spots.count()];
    Arrays.setAll(fromCentre, i -> Math.hypot(spots.x()[i], spots.y()[i]));
    this.fromChosen = new double[spots.count()];
    Arrays.fill(fromChosen, Double.MAX_VALUE);
  }

  /** At most {@code most} spots, in their own order. */
  static LocalSpots of(LocalSpots spots, int most) {
    return spots.count() <= most ? spots : spots.only(new SpreadChoice(spots).choose(most));
  }

  private int[] choose(int most) {
    int[] chosen = new int[most];
    for (int k = 0; k < most; k++) {
      int next = farthest();
      chosen[k] = next;
      for (int i = 0; i < fromChosen.length; i++) {
        double distance =
            Math.hypot(spots.x()[i] - spots.x()[next], spots.y()[i] - spots.y()[next]);
        fromChosen[i] = Math.min(fromChosen[i], distance);
      }
      fromChosen[next] = -1;
    }
    Arrays.sort(chosen);
    return chosen;
  }

  private int farthest() {
    boolean[] open = new boolean[fromChosen.length];
    Arrays.fill(open, true);
    keepLargest(open, i -> fromChosen[i]);
    keepLargest(open, i -> fromCentre[i]);
    keepLargest(open, i -> spots.z()[i]);
    int first = 0;
    while (!open[first]) {
      first++;
    }
    return first;
  }

  private static void keepLargest(boolean[] open, IntToDoubleFunction value) {
    double largest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < open.length; i++) {
      if (open[i]) {
        largest = Math.max(largest, value.applyAsDouble(i));
      }
    }
    double least = largest - EQUAL * Math.abs(largest);
    for (int i = 0; i < open.length; i++) {
      open[i] &= value.applyAsDouble(i) >= least;
    }
  }
}
