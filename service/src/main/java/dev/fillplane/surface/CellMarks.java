package dev.fillplane.surface;

import java.util.Arrays;
import java.util.List;

/**
 * Tells for the cells of a lattice whether they lie in a polygon, are cut by its edge, or neither.
 */
final class CellMarks {

  private static final byte OUTSIDE = 0;
  private static final byte INSIDE = 1;
  private static final byte CUT = 2;

  private final Lattice lattice;
  private final List<Ring> rings;
  private final double margin;
  private final int firstColumn;
  private final int lastColumn;
  private final int firstRow;
  private final int lastRow;
  private final byte[] marks;

  /**
   * Marks all cells.
   *
   * @param margin how near an edge may come to a cell before the cell counts as cut
   */
  CellMarks(Lattice lattice, List<Ring> rings, double margin) {
    this.lattice = lattice;
    this.rings = rings;
    this.margin = margin;
    Ring shell = rings.get(0);
    firstColumn = lattice.column(Arrays.stream(shell.x()).min().orElse(0) - margin);
    lastColumn = lattice.column(Arrays.stream(shell.x()).max().orElse(0) + margin);
    firstRow = lattice.row(Arrays.stream(shell.y()).min().orElse(0) - margin);
    lastRow = lattice.row(Arrays.stream(shell.y()).max().orElse(0) + margin);
    marks = new byte[(lastColumn - firstColumn + 1) * (lastRow - firstRow + 1)];
    for (Ring ring : rings) {
      markEdges(ring);
    }
    for (int row = firstRow; row <= lastRow; row++) {
      markInside(row);
    }
  }

  int firstRow() {
    return firstRow;
  }

  int lastRow() {
    return lastRow;
  }

  int firstColumn() {
    return firstColumn;
  }

  int lastColumn() {
    return lastColumn;
  }

  /** Whether a cell lies in the polygon. */
  boolean isInside(int column, int row) {
    return marks[index(column, row)] == INSIDE;
  }

  /** Whether the edge may cut a cell. */
  boolean isCut(int column, int row) {
    return marks[index(column, row)] == CUT;
  }

  private int index(int column, int row) {
    return (row - firstRow) * (lastColumn - firstColumn + 1) + column - firstColumn;
  }

  private void markEdges(Ring ring) {
    for (int i = 0, n = ring.size(); i < n; i++) {
      int j = (i + 1) % n;
      markEdge(ring.x()[i], ring.y()[i], ring.x()[j], ring.y()[j]);
    }
  }

  private void markEdge(double x1, double y1, double x2, double y2) {
    int top = lattice.row(Math.max(y1, y2) + margin);
    for (int row = lattice.row(Math.min(y1, y2) - margin); row <= top; row++) {
      double south = row == 0 ? Double.NEGATIVE_INFINITY : row * lattice.cell() - margin;
      double north =
          row == lattice.rows() - 1
              ? Double.POSITIVE_INFINITY
              : (row + 1) * lattice.cell() + margin;
      double a = xWithin(x1, y1, x2, y2, south, north);
      double b = xWithin(x2, y2, x1, y1, south, north);
      int last = lattice.column(Math.max(a, b) + margin);
      for (int column = lattice.column(Math.min(a, b) - margin); column <= last; column++) {
        marks[index(column, row)] = CUT;
      }
    }
  }

  /** Where an edge that starts at the first position enters a strip. */
  private static double xWithin(
      double x1, double y1, double x2, double y2, double south, double north) {
    double y = Math.max(south, Math.min(north, y1));
    if (y == y1 || y1 == y2) {
      return x1;
    }
    return x1 + Math.max(0, Math.min(1, (y - y1) / (y2 - y1))) * (x2 - x1);
  }

  private void markInside(int row) {
    double[] crossings = crossings((row + 0.5) * lattice.cell());
    int passed = 0;
    for (int column = firstColumn; column <= lastColumn; column++) {
      double x = (column + 0.5) * lattice.cell();
      while (passed < crossings.length && crossings[passed] < x) {
        passed++;
      }
      if (marks[index(column, row)] == OUTSIDE && passed % 2 == 1) {
        marks[index(column, row)] = INSIDE;
      }
    }
  }

  private double[] crossings(double y) {
    double[] found = new double[rings.stream().mapToInt(Ring::size).sum()];
    int count = 0;
    for (Ring ring : rings) {
      for (int i = 0, n = ring.size(); i < n; i++) {
        int j = (i + 1) % n;
        double y1 = ring.y()[i];
        double y2 = ring.y()[j];
        if (y1 <= y != y2 <= y) {
          found[count++] = ring.x()[i] + (y - y1) / (y2 - y1) * (ring.x()[j] - ring.x()[i]);
        }
      }
    }
    double[] crossings = Arrays.copyOf(found, count);
    Arrays.sort(crossings);
    return crossings;
  }
}
