package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HilbertOrderTest {

  /** A Hilbert curve steps from cell to neighbouring cell and visits each once. */
  @Test
  void stepsFromNeighbourToNeighbour() {
    int side = 32;
    double[] x = IntStream.range(0, side * side).mapToDouble(i -> i % side).toArray();
    double[] y = IntStream.range(0, side * side).mapToDouble(i -> i / side).toArray();
    int[] order = HilbertOrder.of(x, y, new double[x.length]);
    for (int i = 1; i < order.length; i++) {
      double step =
          Math.abs(x[order[i]] - x[order[i - 1]]) + Math.abs(y[order[i]] - y[order[i - 1]]);
      assertEquals(1, step, 0, "step " + i);
    }
    int[] sorted = order.clone();
    Arrays.sort(sorted);
    assertArrayEquals(IntStream.range(0, side * side).toArray(), sorted);
  }

  @Test
  void onePlaceComesByElevation() {
    double[] x = {0, 1, 1, 1};
    double[] y = {0, 1, 1, 1};
    assertArrayEquals(
        new int[] {0, 3, 1, 2}, HilbertOrder.of(x, y, new double[] {0, 0.2, 0.3, 0.1}));
  }
}
