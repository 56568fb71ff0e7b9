package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Position;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts the floor of some rooms by many planes, one after another. Exact for the piecewise-linear
 * floor; cells that a plane passes without touching are only looked at.
 *
 * <p>Positions are counted from a place that is told, so that moments lose no digits.
 */
public final class FloorCutter {

  /** A cell: centre (x, y, floor), corners' floor, mean floor, most that a corner is off. */
  private static final int CELL = 9;

  /** A triangle: signed area, then x, y, floor of its corners. */
  private static final int TRIANGLE = 10;

  private final double side;
  private final double[] cells;
  private final double[] triangles;
  private final double area;
  private final double momentX;
  private final double momentY;
  private final double volume;
  private final double[] seconds;

  private FloorCutter(double side, double[] cells, double[] triangles) {
    this.side = side;
    this.cells = cells;
    this.triangles = triangles;
    double[] sums = new double[9];
    for (int i = 0; i < cells.length; i += CELL) {
      add(sums, side * side, cells[i], cells[i + 1], cells[i + 7]);
    }
    for (int i = 0; i < triangles.length; i += TRIANGLE) {
      add(sums, triangles[i], third(i + 1), third(i + 2), third(i + 3));
    }
    area = sums[0];
    momentX = sums[1];
    momentY = sums[2];
    volume = sums[3];
    seconds = Arrays.copyOfRange(sums, 4, 9);
  }

  private static void add(double[] sums, double area, double x, double y, double floor) {
    sums[0] += area;
    sums[1] += area * x;
    sums[2] += area * y;
    sums[3] += area * floor;
    sums[4] += area * x * x;
    sums[5] += area * x * y;
    sums[6] += area * y * y;
    sums[7] += area * x * floor;
    sums[8] += area * y * floor;
  }

  private double third(int i) {
    return (triangles[i] + triangles[i + 3] + triangles[i + 6]) / 3;
  }

  static FloorCutter of(
      List<Region> regions, Lattice lattice, NodeHeights heights, Position about) {
    int whole = regions.stream().mapToInt(region -> region.whole().length).sum();
    double[] cells = new double[CELL * whole];
    TriangleList pieces = new TriangleList(lattice, heights, about);
    int at = 0;
    for (Region region : regions) {
      Stopped.ifInterrupted();
      for (int cell : region.whole()) {
        cells[at] = lattice.centreX(cell) + lattice.originX() - about.x();
        cells[at + 1] = lattice.centreY(cell) + lattice.originY() - about.y();
        fill(cells, at, lattice, heights, cell);
        at += CELL;
      }
      region.pieces().forEach(pieces::add);
    }
    return new FloorCutter(lattice.cell(), cells, pieces.values());
  }

  private static void fill(double[] cells, int at, Lattice lattice, NodeHeights heights, int cell) {
    double centre = heights.at(lattice.centre(cell));
    double sum = 0;
    double off = 0;
    int southWest = lattice.corner(cell, 0);
    int northWest = southWest + lattice.columns() + 1;
    int[] corners = {southWest, southWest + 1, northWest + 1, northWest};
    for (int i = 0; i < 4; i++) {
      double corner = heights.at(corners[i]);
      cells[at + 3 + i] = corner;
      sum += corner;
      off = Math.max(off, Math.abs(corner - centre));
    }
    cells[at + 2] = centre;
    cells[at + 7] = sum / 6 + centre / 3;
    cells[at + 8] = off;
  }

  /** Area of the rooms. */
  public double area() {
    return area;
  }

  /** First moment of the area. */
  public double momentX() {
    return momentX;
  }

  /** First moment of the area. */
  public double momentY() {
    return momentY;
  }

  /** Integral of the elevation of the floor. */
  public double volume() {
    return volume;
  }

  /**
   * Integrals of xx, xy, yy, and of the elevation of the floor times x and times y; as if each cell
   * lay in its centroid, which is enough for a mean plane.
   */
  public double[] seconds() {
    return seconds.clone();
  }

  /** What a plane with the elevation {@code level} at the position counted from cuts off. */
  public PlaneCut cut(double level, double slopeX, double slopeY) {
    CutSum sum = new CutSum();
    double tilt = (Math.abs(slopeX) + Math.abs(slopeY)) * side / 2;
    for (int i = 0; i < cells.length; i += CELL) {
      double depth = level + slopeX * cells[i] + slopeY * cells[i + 1] - cells[i + 2];
      double off = cells[i + 8] + tilt;
      if (depth < off) {
        if (depth <= -off) {
          double height = depth + cells[i + 2] - cells[i + 7];
          sum.addWhole(side * side, cells[i], cells[i + 1], height);
        } else {
          cutCell(sum, i, depth, slopeX, slopeY);
        }
      }
    }
    for (int i = 0; i < triangles.length; i += TRIANGLE) {
      cutTriangle(sum, i, level, slopeX, slopeY);
    }
    return sum.cut();
  }

  private void cutCell(CutSum sum, int i, double centre, double slopeX, double slopeY) {
    double half = side / 2;
    double x = cells[i];
    double y = cells[i + 1];
    double middle = centre + cells[i + 2];
    double east = slopeX * half;
    double north = slopeY * half;
    double southWest = middle - east - north - cells[i + 3];
    double southEast = middle + east - north - cells[i + 4];
    double northEast = middle + east + north - cells[i + 5];
    double northWest = middle - east + north - cells[i + 6];
    double quarter = half * half;
    double w = x - half;
    double e = x + half;
    double s = y - half;
    double n = y + half;
    sum.add(quarter, w, s, southWest, e, s, southEast, x, y, centre);
    sum.add(quarter, e, s, southEast, e, n, northEast, x, y, centre);
    sum.add(quarter, e, n, northEast, w, n, northWest, x, y, centre);
    sum.add(quarter, w, n, northWest, w, s, southWest, x, y, centre);
  }

  private void cutTriangle(CutSum sum, int i, double level, double slopeX, double slopeY) {
    double[] t = triangles;
    double d1 = level + slopeX * t[i + 1] + slopeY * t[i + 2] - t[i + 3];
    double d2 = level + slopeX * t[i + 4] + slopeY * t[i + 5] - t[i + 6];
    double d3 = level + slopeX * t[i + 7] + slopeY * t[i + 8] - t[i + 9];
    sum.add(t[i], t[i + 1], t[i + 2], d1, t[i + 4], t[i + 5], d2, t[i + 7], t[i + 8], d3);
  }
}
