package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Readings of a dense survey against their neighbours; all floors are invented. */
class DenseDoubtsTest {

  /** The plain way: lay the floor anew through all the others. */
  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void leavingOutIsLayingAnew(Method method) {
    Spots spots = noisy(150, 4);
    DensePlaces places = DensePlaces.of(spots);
    var navigator = Triangulation.of(places).tin().getNavigator();
    int told = 0;
    for (int spot = 0; spot < spots.count(); spot++) {
      int place = places.ofSpot()[spot];
      var omission = Omission.of(places, navigator, method, place, new boolean[150]);
      if (omission.isPresent()) {
        double anew =
            DenseSurface.fit(without(spots, spot), method)
                .elevation(spots.x()[spot], spots.y()[spot]);
        assertEquals(spots.elevation()[spot] - anew, omission.get().residual(), 1e-12);
        assertEquals(nearest(spots, spot), omission.get().distance(), 1e-12);
        told++;
      }
    }
    assertTrue(told > 120, "only " + told);
  }

  private static Spots without(Spots spots, int left) {
    int[] kept = IntStream.range(0, spots.count()).filter(i -> i != left).toArray();
    return new Spots(
        IntStream.of(kept).mapToDouble(i -> spots.x()[i]).toArray(),
        IntStream.of(kept).mapToDouble(i -> spots.y()[i]).toArray(),
        IntStream.of(kept).mapToDouble(i -> spots.elevation()[i]).toArray(),
        IntStream.of(kept).mapToDouble(i -> spots.variance()[i]).toArray());
  }

  private static double nearest(Spots spots, int spot) {
    return IntStream.range(0, spots.count())
        .filter(i -> i != spot)
        .mapToDouble(i -> distance(spots, spot, i))
        .min()
        .orElseThrow();
  }

  private static double distance(Spots spots, int one, int other) {
    return Math.hypot(spots.x()[one] - spots.x()[other], spots.y()[one] - spots.y()[other]);
  }

  private static Spots noisy(int count, long seed) {
    Random random = new Random(seed);
    return Floors.scattered(
        count, seed, (x, y) -> Floors.bumpy(x, y) + 0.001 * random.nextGaussian());
  }

  @Test
  void oneWrongReadingDoesNotBringItsNeighboursDown() {
    Spots spots = noisy(4_000, 2);
    spots.elevation()[99] += 0.025;
    LeaveOneOut others = DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR).leaveOneOut();
    assertEquals(0.025, others.residual()[99], 0.005);
    assertTrue(others.told()[99]);
    assertEquals(1, count(others));
  }

  /** One survey in twenty may name a right reading: of 40 surveys 2, and 7 in one of 200 tries. */
  @Test
  void rightReadingsAreHardlyEverNamed() {
    int named = 0;
    for (int seed = 0; seed < 40; seed++) {
      named += count(DenseSurface.fit(noisy(2_500, seed), Method.NATURAL_NEIGHBOUR).leaveOneOut());
    }
    assertTrue(named <= 7, named + " named");
  }

  @Test
  void atMostOneHundredAreNamed() {
    Spots spots = noisy(6_000, 2);
    for (int i = 0; i < 150; i++) {
      spots.elevation()[40 * i] += 0.03;
    }
    LeaveOneOut others = DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR).leaveOneOut();
    assertEquals(DenseDoubts.MOST, count(others));
  }

  private static int count(LeaveOneOut others) {
    int count = 0;
    for (boolean told : others.told()) {
      count += told ? 1 : 0;
    }
    return count;
  }
}
