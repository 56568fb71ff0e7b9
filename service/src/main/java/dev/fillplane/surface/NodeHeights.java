package dev.fillplane.surface;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.List;

/**
 * Elevations at the corners and centres of the cells that touch a room, and the piecewise-linear
 * surface through them: four triangles a cell. Away from the rooms the nearest such cell (by steps
 * over the lattice) answers, at its nearest position.
 */
final class NodeHeights {

  private final Lattice lattice;
  private final double[] heights;
  private final int[] nearest;
  private final double[] mean;
  private final double[] lowest;
  private final double[] highest;

  private NodeHeights(Lattice lattice, double[] heights, int[] nearest) {
    this.lattice = lattice;
    this.heights = heights;
    this.nearest = nearest;
    mean = new double[lattice.cells()];
    lowest = new double[lattice.cells()];
    highest = new double[lattice.cells()];
    for (int cell = 0; cell < mean.length; cell++) {
      summarise(cell);
    }
  }

  private void summarise(int cell) {
    double centre = heights[lattice.centre(cell)];
    double corners = 0;
    lowest[cell] = centre;
    highest[cell] = centre;
    for (int i = 0; i < 4; i++) {
      double corner = heights[lattice.corner(cell, i)];
      corners += corner;
      lowest[cell] = Math.min(lowest[cell], corner);
      highest[cell] = Math.max(highest[cell], corner);
    }
    mean[cell] = corners / 6 + centre / 3;
  }

  static NodeHeights sample(Lattice lattice, List<Region> regions, Surface surface) {
    boolean[] touched = new boolean[lattice.cells()];
    for (Region region : regions) {
      Arrays.stream(region.whole()).forEach(cell -> touched[cell] = true);
      Arrays.stream(region.cut()).forEach(cell -> touched[cell] = true);
    }
    double[] heights = new double[lattice.nodes()];
    int[] wanted = wanted(lattice, touched);
    double[] x = new double[wanted.length];
    double[] y = new double[wanted.length];
    for (int i = 0; i < wanted.length; i++) {
      x[i] = lattice.originX() + lattice.nodeX(wanted[i]);
      y[i] = lattice.originY() + lattice.nodeY(wanted[i]);
    }
    double[] found = surface.elevations(x, y);
    for (int i = 0; i < wanted.length; i++) {
      heights[wanted[i]] = found[i];
    }
    return new NodeHeights(lattice, heights, nearest(lattice, touched));
  }

  private static int[] wanted(Lattice lattice, boolean[] touched) {
    boolean[] nodes = new boolean[lattice.nodes()];
    int count = 0;
    for (int cell = 0; cell < touched.length; cell++) {
      for (int which = 0; touched[cell] && which <= 4; which++) {
        int node = which < 4 ? lattice.corner(cell, which) : lattice.centre(cell);
        count += nodes[node] ? 0 : 1;
        nodes[node] = true;
      }
    }
    int[] wanted = new int[count];
    int n = 0;
    for (int node = 0; node < nodes.length; node++) {
      if (nodes[node]) {
        wanted[n++] = node;
      }
    }
    return wanted;
  }

  /** For each cell the nearest that is touched, spread step by step. */
  private static int[] nearest(Lattice lattice, boolean[] touched) {
    int[] nearest = new int[touched.length];
    ArrayDeque<Integer> front = new ArrayDeque<>();
    for (int cell = 0; cell < touched.length; cell++) {
      nearest[cell] = touched[cell] ? cell : -1;
      if (touched[cell]) {
        front.add(cell);
      }
    }
    while (!front.isEmpty()) {
      int cell = front.remove();
      int column = lattice.columnOf(cell);
      int row = lattice.rowOf(cell);
      spread(nearest, front, cell, row > 0 ? cell - lattice.columns() : -1);
      spread(nearest, front, cell, column > 0 ? cell - 1 : -1);
      spread(nearest, front, cell, column + 1 < lattice.columns() ? cell + 1 : -1);
      spread(nearest, front, cell, row + 1 < lattice.rows() ? cell + lattice.columns() : -1);
    }
    return nearest;
  }

  private static void spread(int[] nearest, ArrayDeque<Integer> front, int from, int to) {
    if (to >= 0 && nearest[to] < 0) {
      nearest[to] = nearest[from];
      front.add(to);
    }
  }

  double at(int node) {
    return heights[node];
  }

  /** Whether a cell touches a room, so that its nodes are known. */
  boolean knows(int cell) {
    return nearest[cell] == cell;
  }

  /** Mean elevation of a cell that {@link #knows} tells of. */
  double mean(int cell) {
    return mean[cell];
  }

  /** Elevation of the lowest node of such a cell. */
  double lowest(int cell) {
    return lowest[cell];
  }

  /** Elevation of the highest node of such a cell. */
  double highest(int cell) {
    return highest[cell];
  }

  /**
   * Integral of the elevation over a part of a cell. Its four triangles together are {@code c + (p
   * s + q t) / 2 + k |s| + l |t|}, with {@code s = east + north} and {@code t = east - north} from
   * the centre: linear, and bent along the diagonals. The coefficients follow from centre and
   * corners.
   */
  double integral(int cell, BoxSum part) {
    int southWest = lattice.corner(cell, 0);
    int northWest = southWest + lattice.columns() + 1;
    double centre = heights[lattice.centre(cell)];
    double sw = heights[southWest] - centre;
    double se = heights[southWest + 1] - centre;
    double ne = heights[northWest + 1] - centre;
    double nw = heights[northWest] - centre;
    double along = (ne - sw) * part.rising() + (se - nw) * part.falling();
    double bent = (ne + sw) * part.risingSize() + (se + nw) * part.fallingSize();
    return centre * part.area() + (along + bent) / (2 * lattice.cell());
  }

  /** Elevation at a local position. */
  double at(double x, double y) {
    int column = lattice.column(x);
    int row = lattice.row(y);
    int cell = row * lattice.columns() + column;
    if (nearest[cell] != cell) {
      column = lattice.columnOf(nearest[cell]);
      row = lattice.rowOf(nearest[cell]);
    }
    double half = lattice.cell() / 2;
    double east = within(half, x - (column + 0.5) * lattice.cell());
    double north = within(half, y - (row + 0.5) * lattice.cell());
    int triangle;
    if (Math.abs(east) > Math.abs(north)) {
      triangle = east > 0 ? 1 : 3;
    } else {
      triangle = north > 0 ? 2 : 0;
    }
    return at(column, row, triangle, east, north);
  }

  /** Asked for some ten thousand times; comparing is faster than the library's minimum. */
  private static double within(double half, double at) {
    if (at > half) {
      return half;
    }
    return at < -half ? -half : at;
  }

  /**
   * Elevation on the plane of a triangle.
   *
   * @param east counted from the centre of the cell
   * @param north counted from the centre of the cell
   */
  double at(int cell, int triangle, double east, double north) {
    return at(lattice.columnOf(cell), lattice.rowOf(cell), triangle, east, north);
  }

  private double at(int column, int row, int triangle, double east, double north) {
    int southWest = row * (lattice.columns() + 1) + column;
    int northWest = southWest + lattice.columns() + 1;
    double centre = heights[lattice.centre(row * lattice.columns() + column)];
    return switch (triangle) {
      case 0 -> at(heights[southWest], heights[southWest + 1], centre, -north, east);
      case 1 -> at(heights[southWest + 1], heights[northWest + 1], centre, east, north);
      case 2 -> at(heights[northWest + 1], heights[northWest], centre, north, -east);
      default -> at(heights[northWest], heights[southWest], centre, -east, -north);
    };
  }

  /** The first and the second corner anticlockwise, and how far out and along from the centre. */
  private double at(double first, double second, double centre, double outward, double along) {
    double rise = (first + second) / 2 - centre;
    return centre + (2 * rise * outward + (second - first) * along) / lattice.cell();
  }
}
