package dev.fillplane.depth;

import static dev.fillplane.depth.StrangeFloor.between;

import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.Realisations;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;

/** One invented floor, read with an error, and the odds of its volume beside the true volume. */
record SurveyedFloor(int readings, double trueVolume, VolumeOdds odds) {

  private static final double READING_ERROR = 0.001;
  private static final double MINIMUM_DEPTH = 0.003;
  private static final double STEP = 0.1;
  private static final double CELL = 0.25;
  private static final int REALISATIONS = 200;

  /** Surveys floor {@code number} with between {@code fewest} and {@code most} readings. */
  static SurveyedFloor of(int number, int fewest, int most) {
    Random random = new Random(7_919L * number + 17);
    double width = between(random, 3, 6);
    double length = between(random, 4, 8);
    StrangeFloor[] kinds = StrangeFloor.values();
    DoubleBinaryOperator floor = kinds[number % kinds.length].draw(random, width, length);
    int count = fewest + random.nextInt(most - fewest + 1);
    Spots spots =
        read(floor, places(random, number / kinds.length % 3, count, width, length), random);
    double[] heights = heights(floor, width, length);
    double target = target(heights, number / 18 % 2 == 0);
    double cell = width * length / heights.length;
    double trueVolume = Arrays.stream(heights).map(z -> Math.max(0, target - z)).sum() * cell;
    return new SurveyedFloor(spots.count(), trueVolume, odds(spots, width, length, target));
  }

  private static VolumeOdds odds(Spots spots, double width, double length, double target) {
    Room room = TestFloors.room("hall", new double[] {0, 0, width, 0, width, length, 0, length});
    KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
    FloorSample sample = FloorSample.of(List.of(room), surface, CELL);
    Realisations realisations =
        Realisations.draw(surface, List.of(room.outline().polygon()), REALISATIONS, 1);
    return DepthField.of(sample, Plane.level(target)).volumes(realisations).odds();
  }

  /** Under the highest true point all is poured, under the mean only the hollows are. */
  private static double target(double[] heights, boolean overAll) {
    return overAll
        ? Arrays.stream(heights).max().orElseThrow() + MINIMUM_DEPTH
        : Arrays.stream(heights).average().orElseThrow();
  }

  private static double[] heights(DoubleBinaryOperator floor, double width, double length) {
    int columns = (int) Math.ceil(width / STEP);
    int rows = (int) Math.ceil(length / STEP);
    double[] heights = new double[columns * rows];
    Arrays.setAll(
        heights,
        i ->
            floor.applyAsDouble(
                (i % columns + 0.5) * width / columns, (i / columns + 0.5) * length / rows));
    return heights;
  }

  private static double[][] places(
      Random random, int kind, int count, double width, double length) {
    double[][] places = new double[count][];
    int columns = (int) Math.max(2, Math.round(Math.sqrt(count * width / length)));
    int rows = (count + columns - 1) / columns;
    for (int i = 0; i < count; i++) {
      places[i] =
          switch (kind) {
            case 0 ->
                new double[] {
                  (i % columns + between(random, 0.2, 0.8)) * width / columns,
                  (i / columns + between(random, 0.2, 0.8)) * length / rows
                };
            case 1 -> new double[] {between(random, 0, width), between(random, 0, length)};
            default -> nearWalls(random, i, width, length);
          };
    }
    return places;
  }

  /** Two of three readings within 0.5 m of a wall, all round; the third anywhere. */
  private static double[] nearWalls(Random random, int i, double width, double length) {
    double x = between(random, 0, width);
    double y = between(random, 0, length);
    double off = between(random, 0.05, 0.5);
    return switch (i % 6) {
      case 0 -> new double[] {x, off};
      case 1 -> new double[] {x, length - off};
      case 3 -> new double[] {off, y};
      case 4 -> new double[] {width - off, y};
      default -> new double[] {x, y};
    };
  }

  private static Spots read(DoubleBinaryOperator floor, double[][] places, Random random) {
    double[] x = Arrays.stream(places).mapToDouble(p -> p[0]).toArray();
    double[] y = Arrays.stream(places).mapToDouble(p -> p[1]).toArray();
    double[] z = new double[x.length];
    double[] variance = new double[x.length];
    for (int i = 0; i < z.length; i++) {
      z[i] = floor.applyAsDouble(x[i], y[i]) + READING_ERROR * random.nextGaussian();
      variance[i] = READING_ERROR * READING_ERROR;
    }
    return new Spots(x, y, z, variance);
  }
}
