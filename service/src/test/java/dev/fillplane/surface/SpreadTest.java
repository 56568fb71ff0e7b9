package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

/** How spots lie, and some of them spread over the floor. */
class SpreadTest {

  @Test
  void spacingOfALattice() {
    double[] x = {0, 2, 4, 0, 2, 4, 4.0001};
    double[] y = {0, 0, 0, 3, 3, 3, 3};
    assertEquals(6, Spacing.of(x, y).places());
    assertEquals(2, Spacing.of(x, y).nearest(), 1e-3);
    assertEquals(5, Spacing.of(x, y).extent(), 1e-3);
  }

  @Test
  void onePlaceHasNoSpacing() {
    assertEquals(new Spacing(1, 0, 0), Spacing.of(new double[] {1, 1}, new double[] {2, 2}));
  }

  /** Corners first, then the middle; the two spots beside corners are left out. */
  @Test
  void farthestPointsAreChosen() {
    double[] x = {0, 0, 2, 2, 1, 0.1, 1.9};
    double[] y = {0, 2, 0, 2, 1, 0.1, 1.9};
    LocalSpots spots = LocalSpots.of(Floors.spots(x, y, (a, b) -> a + 10 * b));
    LocalSpots some = SpreadChoice.of(spots, 5);
    assertArrayEquals(new int[] {0, 1, 4, 2, 3}, some.order());
    LocalSpots peak = LocalSpots.of(Floors.spots(x, y, (a, b) -> a == 1 ? 100 : a + 10 * b));
    assertArrayEquals(new int[] {0, 3}, SpreadChoice.of(peak, 2).order());
    assertSame(spots, SpreadChoice.of(spots, 7));
  }
}
