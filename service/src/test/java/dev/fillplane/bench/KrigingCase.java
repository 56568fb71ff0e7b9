package dev.fillplane.bench;

import dev.fillplane.surface.Drift;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.surface.Variogram;
import dev.fillplane.surface.VariogramShape;
import java.util.Arrays;
import java.util.Optional;

/** Readings of an invented floor, a covariance, and 10,000 places to know the floor at. */
final class KrigingCase {

  static final double VARIANCE = 1e-6;
  static final double SILL = 4e-6;
  static final double RANGE = 4;

  private static final int COLUMNS = 125;
  private static final int ROWS = 80;

  private final Spots spots;
  private final double[] x = new double[COLUMNS * ROWS];
  private final double[] y = new double[COLUMNS * ROWS];

  KrigingCase(int readings) {
    InventedFloor floor = new InventedFloor(10, 6, readings);
    double[] elevation = Arrays.stream(floor.reading()).map(reading -> -reading).toArray();
    double[] variance = new double[readings];
    Arrays.fill(variance, VARIANCE);
    spots = new Spots(floor.x(), floor.y(), elevation, variance);
    for (int i = 0; i < x.length; i++) {
      x[i] = (i % COLUMNS + 0.5) * 10 / COLUMNS;
      y[i] = (i / COLUMNS + 0.5) * 6 / ROWS;
    }
  }

  Spots spots() {
    return spots;
  }

  double[] x() {
    return x;
  }

  double[] y() {
    return y;
  }

  double[][] meanAndDeviation() {
    Variogram variogram = new Variogram(VariogramShape.MATERN_3_2, VARIANCE, SILL, RANGE);
    SurfaceWish wish = new SurfaceWish(Optional.empty(), Drift.LINEAR, Optional.of(variogram));
    KrigedSurface surface = KrigedSurface.fit(spots, wish);
    return new double[][] {surface.elevations(x, y), surface.deviations(x, y)};
  }
}
