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

  @Override
  public Fill deeperThan(double depth) {
    double high = Math.max(west, east) - depth;
    double low = Math.min(west, east) - depth;
    if (high <= 0) {
      return new Fill(0, 0);
    }
    double length = low >= 0 ? LENGTH : LENGTH * high / (high - low);
    return new Fill(length, length * (high + Math.max(0, low)) / 2);
  }

  DepthSummary summary() {
    Fill poured = deeperThan(0);
    double volume = poured.volume();
    double deepest = Math.max(west, east);
    return new DepthSummary(
        LENGTH,
        poured.area(),
        poured.meanDepth(),
        deepest,
        Math.min(west, east),
        volume,
        new VolumeOdds(volume, volume, volume),
        List.of(),
        volume - LENGTH * (west + east) / 2,
        LENGTH - poured.area(),
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
