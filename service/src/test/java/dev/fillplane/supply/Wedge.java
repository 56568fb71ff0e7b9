package dev.fillplane.supply;

import dev.fillplane.depth.Contours;
import dev.fillplane.depth.Deepest;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.depth.Grid;
import dev.fillplane.depth.Highest;
import dev.fillplane.depth.VolumeOdds;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** A floor of 8 m by 1 m under a pour that deepens evenly from {@code west} to {@code east}. */
record Wedge(double west, double east) implements Depths {

  private static final double LENGTH = 8;
  private static final double CELL = 0.1;
  private static final int COLUMNS = 80;
  private static final int ROWS = 10;

  @Override
  public double at(double x, double y) {
    return west + (east - west) * x / LENGTH;
  }

  @Override
  public Fill within(Polygon part) {
    return new Fill(part.getArea(), part.getArea() * at(part.getCentroid().getX(), 0));
  }

  /** For a wedge that is nowhere above its target. */
  DepthSummary summary() {
    double mean = (west + east) / 2;
    double volume = LENGTH * mean;
    double deepest = Math.max(west, east);
    return new DepthSummary(
        LENGTH,
        LENGTH,
        mean,
        deepest,
        Math.min(west, east),
        volume,
        new VolumeOdds(volume, volume, volume),
        List.of(),
        0,
        0,
        new Deepest(LENGTH, 0, deepest),
        new Highest(0, 0, 0),
        List.of(),
        grid(),
        new Contours(List.of()));
  }

  /** With a column that lies outside the room. */
  private Grid grid() {
    double[] depths = new double[(COLUMNS + 1) * ROWS];
    for (int i = 0; i < depths.length; i++) {
      int column = i % (COLUMNS + 1);
      depths[i] = column == COLUMNS ? Grid.OUTSIDE : at((column + 0.5) * CELL, 0);
    }
    return new Grid(0, 0, CELL, COLUMNS + 1, ROWS, depths);
  }
}
