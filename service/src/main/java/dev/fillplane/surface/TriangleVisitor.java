package dev.fillplane.surface;

/** Is shown the triangles of the sampled floor, one after another. */
@FunctionalInterface
public interface TriangleVisitor {

  /**
   * One triangle, by its nodes: the two corners of the cell, anticlockwise, then its centre.
   *
   * @param cut whether the edge of the room may pass through its cell; else it lies in the room
   */
  void triangle(int first, int second, int centre, boolean cut);
}
