package dev.fillplane.target;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.target.Cut.Cause;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The point of half spaces that is nearest to the origin, by hand; then with another bend. */
class NewtonStepTest {

  private static final double[] ROUND = {1, 0, 0, 1, 0, 1};

  private static Cut cut(double x, double y, double z, double value) {
    return new Cut(Cause.HIGH_POINT, 0, x, y, z, value, false);
  }

  private static Optional<double[]> nearest(double[] bend, Cut... cuts) {
    double[] origin = new double[3];
    return NewtonStep.from(origin, new double[3], bend, 0)
        .flatMap(step -> step.within(List.of(cuts)));
  }

  private static void assertNearest(double x, double y, double z, Cut... cuts) {
    assertArrayEquals(new double[] {x, y, z}, nearest(ROUND, cuts).orElseThrow(), 1e-8);
  }

  @Test
  void roundBend() {
    assertNearest(0, 0, 0);
    assertNearest(1.5, 1.5, 0, cut(1, 0, 0, 1), cut(1, 1, 0, 3));
    assertNearest(2, 1, 0, cut(1, 0, 0, 2), cut(1, 1, 0, 3));
    assertNearest(2, 1, -1, cut(1, 0, 0, 2), cut(0, 0, -1, 1), cut(1, 1, 0, 3));
    assertNearest(1, 1, 1, cut(1, 0, 0, 1), cut(0, 1, 0, 1), cut(0, 0, 1, 1), cut(1, 1, 1, 2));
  }

  @Test
  void halfSpacesThatDoNotMeet() {
    assertEquals(Optional.empty(), nearest(ROUND, cut(1, 0, 0, 1), cut(-1, 0, 0, 0)));
  }

  /** Least of 2 x^2 + y^2 / 2 with x + y at least 5: x is a quarter of y. */
  @Test
  void otherBend() {
    double[] found = nearest(new double[] {4, 0, 0, 1, 0, 1}, cut(1, 1, 0, 5)).orElseThrow();
    assertArrayEquals(new double[] {1, 4, 0}, found, 1e-7);
  }

  @Test
  void withoutBendThereIsNoStep() {
    assertEquals(Optional.empty(), nearest(new double[6]));
  }
}
