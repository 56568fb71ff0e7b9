package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.surface.FloorCells;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VolumeDrawsTest {

  private static final FloorSample WAVES =
      sample(TestFloors::waves, 0.1, room("l", L_ROOM), room("r", moved(RECTANGLE, 0.3, 8, 0)));

  /** One row a realisation, one value for each metre eastward. */
  private static FloorResiduals residuals(double[]... rows) {
    return new FloorResiduals() {
      @Override
      public int count() {
        return rows.length;
      }

      @Override
      public int cellAt(double x, double y) {
        return Math.max(0, Math.min(rows[0].length - 1, (int) Math.floor(x)));
      }

      @Override
      public double residual(int realisation, int cell) {
        return rows[realisation][cell];
      }
    };
  }

  @Test
  void withoutResidualsEveryDrawIsTheExactVolume() {
    DepthField depths = DepthField.of(WAVES, Plane.level(0.001));
    VolumeDraws draws = depths.volumes(residuals(new double[] {0}, new double[] {0}));
    assertEquals(depths.volume(), draws.volumes()[1], 1e-12);
    assertEquals(depths.pouredArea(), draws.wetAreas()[1], 1e-9);
    assertEquals(depths.rooms().get(1).volume(), draws.roomVolumes()[1][1], 1e-12);
    assertEquals(depths.volume(), draws.odds().p50(), 1e-12);
  }

  @Test
  void higherFloorTakesALayerAway() {
    DepthField depths = DepthField.of(WAVES, Plane.level(0.02));
    VolumeDraws draws = depths.volumes(residuals(new double[] {0.002}, new double[] {-0.002}));
    assertEquals(depths.volume() - 0.002 * depths.area(), draws.volumes()[0], 1e-12);
    assertEquals(depths.volume() + 0.002 * depths.area(), draws.volumes()[1], 1e-12);
    assertEquals(0, draws.bareOdds());
  }

  /**
   * Clipping each realisation: the mean of a higher and a lower floor is more than the middle one.
   */
  @Test
  void drawsAreClippedOneByOne() {
    DepthField depths = DepthField.of(WAVES, Plane.level(0));
    VolumeDraws draws = depths.volumes(residuals(new double[] {0.003}, new double[] {-0.003}));
    double higher = DepthField.of(WAVES, Plane.level(-0.003)).volume();
    double lower = DepthField.of(WAVES, Plane.level(0.003)).volume();
    assertEquals(higher, draws.volumes()[0], 1e-3 * lower);
    assertEquals(lower, draws.volumes()[1], 1e-3 * lower);
  }

  /** Every cell and realisation by itself, for targets under, in and over most of the floor. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.004, 0, 0.003, 0.02})
  void drawsAreThoseOfThePlainSum(double level) {
    Random random = new Random(9);
    double[][] rows = new double[30][10];
    for (double[] row : rows) {
      Arrays.setAll(row, i -> 0.003 * random.nextGaussian());
    }
    FloorResiduals residuals = residuals(rows);
    DepthField depths = DepthField.of(WAVES, Plane.level(level));
    VolumeDraws draws = depths.volumes(residuals);
    for (int draw = 0; draw < rows.length; draw++) {
      for (int room = 0; room < 2; room++) {
        FloorCells cells = WAVES.cells(room);
        double volume = depths.rooms().get(room).volume();
        for (int i = 0; i < cells.count(); i++) {
          double depth = level - cells.elevation()[i];
          double residual = residuals.residual(draw, residuals.cellAt(cells.x()[i], 0));
          double more = Math.max(0, depth - residual) - Math.max(0, depth);
          volume += cells.area()[i] * more;
        }
        assertEquals(Math.max(0, volume), draws.roomVolumes()[draw][room], 1e-13);
      }
    }
  }

  @Test
  void anotherFloorIsRefused() {
    FloorSample flat = sample((x, y) -> 0, 0.1, room("r", RECTANGLE));
    DrawnFloor drawn = DrawnFloor.of(flat, residuals(new double[1]));
    DepthField depths = DepthField.of(WAVES, Plane.level(0));
    assertThrows(IllegalArgumentException.class, () -> depths.volumes(drawn));
  }

  @Test
  void residualsActInTheirCells() {
    FloorSample flat = sample((x, y) -> 0, 0.1, room("r", RECTANGLE));
    double[] rows = {0.001, 0.002, -0.001, 0.012, 0, 0};
    VolumeDraws draws = DepthField.of(flat, Plane.level(0.01)).volumes(residuals(rows));
    double expected = 4 * (0.009 + 0.008 + 0.011 + 0 + 0.01 + 0.01);
    assertEquals(expected, draws.volumes()[0], 1e-12);
    assertEquals(20, draws.wetAreas()[0], 1e-9);
    assertEquals(1, draws.bareOdds());
  }

  @Test
  void bareOddsCountRealisationsThatReachTheTargetAnywhere() {
    FloorSample slope = sample((x, y) -> 0.001 * x, 0.1, room("r", RECTANGLE));
    double[] westOnly = {0.0085, 0, 0, 0, 0, 0};
    double[] eastUp = {0, 0, 0, 0, 0, 0.0041};
    double[] eastTouches = {0, 0, 0, 0, 0, 0.0039};
    double[] calm = new double[6];
    VolumeDraws draws =
        DepthField.of(slope, Plane.level(0.01))
            .volumes(residuals(westOnly, eastUp, eastTouches, calm));
    assertEquals(0.25, draws.bareOdds());
  }

  /** The floor may be 1 mm, 2 mm ... 10 mm too high; the ninth of ten covers nine of them. */
  @Test
  void guardHeightCoversTheShareThatIsAsked() {
    FloorSample flat = sample((x, y) -> 0, 0.1, room("r", RECTANGLE));
    double[][] rows = new double[10][1];
    for (int i = 0; i < 10; i++) {
      rows[i][0] = 0.001 * (10 - i);
    }
    VolumeDraws draws = DepthField.of(flat, Plane.level(0.0045)).volumes(residuals(rows));
    assertEquals(0.6, draws.bareOdds());
    assertEquals(0.0045, draws.guardHeight(0.9), 1e-15);
    assertEquals(0.0055, draws.guardHeight(0.95), 1e-15);
    assertEquals(0, draws.guardHeight(0.4));
    double raised = 0.0045 + draws.guardHeight(0.7);
    assertEquals(0.3, DepthField.of(flat, Plane.level(raised)).volumes(residuals(rows)).bareOdds());
  }

  @Test
  void roomsHaveOddsOfTheirOwn() {
    double[] west = {0.001, 0.001, 0.001, 0.001, 0.001, 0.001, 0, 0, 0, 0};
    VolumeDraws draws =
        DepthField.of(WAVES, Plane.level(0.02)).volumes(residuals(west, new double[10]));
    double more = draws.odds(0).p90() - draws.odds(0).p10();
    assertEquals(0.8 * 0.001 * 18, more, 1e-9);
    assertEquals(draws.roomVolumes()[1][1], draws.odds(1).p50(), 1e-9);
  }

  /** Type 7, as in R's quantile(): 1 2 3 4 10 gives 1.4, 3, 7.6. */
  @Test
  void quantilesAreOfTypeSeven() {
    double[] values = {10, 2, 4, 1, 3};
    VolumeOdds odds = new VolumeDraws(values, values, new double[5][1], values).odds();
    assertEquals(1.4, odds.p10(), 1e-12);
    assertEquals(3, odds.p50(), 1e-12);
    assertEquals(7.6, odds.p90(), 1e-12);
    assertArrayEquals(new double[] {10, 2, 4, 1, 3}, values);
  }
}
