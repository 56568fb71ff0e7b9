package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Odds of dense surveys; all floors are invented. */
class DenseResidualsTest {

  private static final List<Polygon> ROOM =
      List.of((Polygon) new GeometryFactory().toGeometry(new Envelope(0, 10, 0, 6)));

  private static final int SIDE_X = 50;
  private static final int SIDE_Y = 30;

  @Test
  void pairsCancelOutAndSeedsRepeat() {
    DenseSurface surface = surface(Floors.scattered(300, 1, Floors::bumpy));
    FloorResiduals drawn = surface.realisations(ROOM, 20, 7);
    FloorResiduals again = surface.realisations(ROOM, 20, 7);
    FloorResiduals other = surface.realisations(ROOM, 20, 8);
    assertEquals(20, drawn.count());
    int cell = drawn.cellAt(3, 3);
    for (int first = 0; first < 20; first += 2) {
      assertNotEquals(0, drawn.residual(first, cell));
      assertEquals(drawn.residual(first, cell), -drawn.residual(first + 1, cell), 0);
      assertEquals(drawn.residual(first, cell), again.residual(first, cell), 0);
      assertNotEquals(drawn.residual(first, cell), other.residual(first, cell));
    }
    assertThrows(IllegalArgumentException.class, () -> surface.realisations(ROOM, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> surface.realisations(List.of(), 1, 1));
  }

  private static DenseSurface surface(Spots spots) {
    return DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR);
  }

  /** The mean of many readings is as unsure as what they share: 1 mm sqrt(1/2/3) = 0.41 mm. */
  @Test
  void whatReadingsShareDoesNotAverageOut() {
    Random random = new Random(3);
    Spots spots = Floors.scattered(20_000, 3, (x, y) -> 0.001 * random.nextGaussian());
    double[] means = means(surface(spots).realisations(ROOM, 4_000, 5));
    double squares = Arrays.stream(means).map(mean -> mean * mean).average().orElseThrow();
    assertEquals(0.00041, Math.sqrt(squares), 0.00003);
  }

  /** Some 40 readings in each cell: 0.71 mm sqrt(2 / 40) = 0.16 mm between two neighbours. */
  @Test
  void whatReadingsHaveOfTheirOwnAveragesOut() {
    Random random = new Random(3);
    Spots spots = Floors.scattered(20_000, 3, (x, y) -> 0.001 * random.nextGaussian());
    FloorResiduals drawn = surface(spots).realisations(ROOM, 4_000, 5);
    double squares = 0;
    for (int i = 0; i < drawn.count(); i++) {
      double step = drawn.residual(i, drawn.cellAt(5, 3)) - drawn.residual(i, drawn.cellAt(5.4, 3));
      squares += step * step / drawn.count();
    }
    assertEquals(0.00016, Math.sqrt(squares), 0.00005);
  }

  /** Without readings in a part of the room its cells are unsure of their own. */
  @Test
  void bareCornersAreLessSure() {
    Spots spots = Floors.scattered(2_000, 3, (x, y) -> Floors.bumpy(x, y) + ripple(x, y));
    int[] west = new int[spots.count()];
    Arrays.setAll(west, i -> spots.x()[i] < 6 ? i : -1);
    west = Arrays.stream(west).filter(i -> i >= 0).toArray();
    FloorResiduals drawn =
        surface(
                Floors.spots(
                    Arrays.stream(west).mapToDouble(i -> spots.x()[i]).toArray(),
                    Arrays.stream(west).mapToDouble(i -> spots.y()[i]).toArray(),
                    Arrays.stream(west).mapToDouble(i -> spots.elevation()[i]).toArray()))
            .realisations(ROOM, 400, 5);
    assertTrue(spread(drawn, 9.5, 3) > 2 * spread(drawn, 3, 3));
  }

  private static double ripple(double x, double y) {
    return 0.002 * Math.sin(9 * x) * Math.sin(8 * y);
  }

  private static double spread(FloorResiduals drawn, double x, double y) {
    double squares = 0;
    for (int i = 0; i < drawn.count(); i++) {
      double residual = drawn.residual(i, drawn.cellAt(x, y));
      squares += residual * residual / drawn.count();
    }
    return Math.sqrt(squares);
  }

  /**
   * Of 200 surveys the true mean height lies between p10 and p90 in 160, give or take 17 (three
   * standard errors); more where the floor is better told than it says, so the upper end is wide.
   */
  @Test
  void trueMeanLiesWhereTheOddsSay() {
    int inside = 0;
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      DoubleBinaryOperator floor = waves(random);
      double[] shared = {normal(random), normal(random), normal(random)};
      Spots spots =
          Floors.scattered(
              400,
              seed,
              (x, y) ->
                  floor.applyAsDouble(x, y)
                      + Math.sqrt(1e-6 / 6)
                          * (shared[0] + shared[1] * (x - 5) / 2.89 + shared[2] * (y - 3) / 1.73)
                      + Math.sqrt(0.5e-6) * random.nextGaussian());
      DenseSurface surface = surface(spots);
      double error = mean(floor) - mean(surface::elevation);
      double[] means = means(surface.realisations(ROOM, 200, seed));
      Arrays.sort(means);
      inside += means[20] <= error && error <= means[179] ? 1 : 0;
    }
    assertTrue(inside >= 143 && inside <= 192, inside + " of 200");
  }

  private static double normal(Random random) {
    return random.nextGaussian();
  }

  private static DoubleBinaryOperator waves(Random random) {
    double[][] waves = new double[12][];
    for (int i = 0; i < waves.length; i++) {
      double length = 1 + 6 * random.nextDouble();
      double angle = 2 * Math.PI * random.nextDouble();
      double turn = 2 * Math.PI * random.nextDouble();
      double k = 2 * Math.PI / length;
      waves[i] = new double[] {k * Math.cos(angle), k * Math.sin(angle), turn, length};
    }
    return (x, y) ->
        Arrays.stream(waves)
            .mapToDouble(w -> 0.0004 * w[3] * Math.sin(w[0] * x + w[1] * y + w[2]))
            .sum();
  }

  private static double mean(DoubleBinaryOperator floor) {
    double sum = 0;
    for (int i = 0; i < SIDE_X * SIDE_Y; i++) {
      sum += floor.applyAsDouble(0.1 + 0.2 * (i % SIDE_X), 0.1 + 0.2 * (i / SIDE_X));
    }
    return sum / (SIDE_X * SIDE_Y);
  }

  private static double[] means(FloorResiduals drawn) {
    int[] cells = new int[SIDE_X * SIDE_Y];
    Arrays.setAll(cells, i -> drawn.cellAt(0.1 + 0.2 * (i % SIDE_X), 0.1 + 0.2 * (i / SIDE_X)));
    double[] means = new double[drawn.count()];
    for (int draw = 0; draw < means.length; draw++) {
      for (int cell : cells) {
        means[draw] += drawn.residual(draw, cell) / cells.length;
      }
    }
    return means;
  }
}
