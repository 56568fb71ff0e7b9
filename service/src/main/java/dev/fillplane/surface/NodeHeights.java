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

  private NodeHeights(Lattice lattice, double[] heights, int[] nearest) {
    this.lattice = lattice;
    this.heights = heights;
    this.nearest = nearest;
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

  /** Elevation at a local position. */
  double at(double x, double y) {
    int cell = nearest[lattice.row(y) * lattice.columns() + lattice.column(x)];
    double half = lattice.cell() / 2;
    double east = Math.max(-half, Math.min(half, x - lattice.centreX(cell)));
    double north = Math.max(-half, Math.min(half, y - lattice.centreY(cell)));
    int triangle;
    if (Math.abs(east) > Math.abs(north)) {
      triangle = east > 0 ? 1 : 3;
    } else {
      triangle = north > 0 ? 2 : 0;
    }
    return at(cell, triangle, east, north);
  }

  /**
   * Elevation on the plane of a triangle.
   *
   * @param east counted from the centre of the cell
   * @param north counted from the centre of the cell
   */
  double at(int cell, int triangle, double east, double north) {
    double first = heights[lattice.corner(cell, triangle)];
    double second = heights[lattice.corner(cell, (triangle + 1) % 4)];
    double centre = heights[lattice.centre(cell)];
    double outward = (first + second) / 2 - centre;
    double along = second - first;
    double size = lattice.cell();
    return switch (triangle) {
      case 0 -> centre + (2 * outward * -north + along * east) / size;
      case 1 -> centre + (2 * outward * east + along * north) / size;
      case 2 -> centre + (2 * outward * north + along * -east) / size;
      default -> centre + (2 * outward * -east + along * -north) / size;
    };
  }
}
