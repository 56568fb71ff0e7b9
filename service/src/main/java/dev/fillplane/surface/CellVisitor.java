package dev.fillplane.surface;

/**
 * Is shown how a polygon lies in the cells of a lattice, row by row from the south.
 *
 * @see PolygonCutter
 */
interface CellVisitor {

  /** A cell wholly inside. */
  void whole(int cell);

  /** A cell that the edge may cut; its pieces have been shown. */
  default void cut(int cell) {}

  /**
   * A part of a cell; a clockwise ring is taken away.
   *
   * @param ring holds only until the next one is shown
   * @return whether its pieces by triangles are not wanted any more
   */
  default boolean box(int cell, RingBuffer ring) {
    return false;
  }

  /**
   * A part of a triangle of a cell; a clockwise ring is taken away.
   *
   * @param triangle 0 to 3: south, east, north, west
   * @param ring holds only until the next one is shown
   */
  void piece(int cell, int triangle, RingBuffer ring);
}
