package dev.fillplane.surface;

import org.locationtech.jts.geom.Envelope;

/**
 * Square cells from a south-west corner, row after row. Local coordinates are counted from that
 * corner, so that nothing is lost far from the plan origin. Nodes are numbered: all corners row
 * after row, then the centre of each cell.
 */
record Lattice(double originX, double originY, double cell, int columns, int rows) {

  /** Parts of a cell by which a box may pass its last column before it gets another one. */
  private static final double OVERHANG = 1e-7;

  /** The cells that cover a box. */
  static Lattice over(Envelope box, double cell) {
    return new Lattice(
        box.getMinX(),
        box.getMinY(),
        cell,
        across(box.getWidth(), cell),
        across(box.getHeight(), cell));
  }

  /** How many cells cover a length. */
  static int across(double length, double cell) {
    return (int) Math.max(1, Math.ceil(length / cell - OVERHANG));
  }

  int cells() {
    return columns * rows;
  }

  int corners() {
    return (columns + 1) * (rows + 1);
  }

  int nodes() {
    return corners() + cells();
  }

  int columnOf(int cellIndex) {
    return cellIndex % columns;
  }

  int rowOf(int cellIndex) {
    return cellIndex / columns;
  }

  int column(double localX) {
    return within((int) (localX / cell), columns);
  }

  int row(double localY) {
    return within((int) (localY / cell), rows);
  }

  /** Before the first counts as the first; so it does not matter that a cast rounds toward 0. */
  private static int within(int at, int count) {
    return Math.max(0, Math.min(count - 1, at));
  }

  double centreX(int cellIndex) {
    return (columnOf(cellIndex) + 0.5) * cell;
  }

  double centreY(int cellIndex) {
    return (rowOf(cellIndex) + 0.5) * cell;
  }

  int centre(int cellIndex) {
    return corners() + cellIndex;
  }

  /** Corner 0 to 3 of a cell, anticlockwise from the south-west. */
  int corner(int cellIndex, int which) {
    int column = columnOf(cellIndex) + (which == 1 || which == 2 ? 1 : 0);
    int row = rowOf(cellIndex) + (which >= 2 ? 1 : 0);
    return row * (columns + 1) + column;
  }

  double nodeX(int node) {
    return node < corners() ? node % (columns + 1) * cell : centreX(node - corners());
  }

  double nodeY(int node) {
    return node < corners() ? Math.floorDiv(node, columns + 1) * cell : centreY(node - corners());
  }
}
