package dev.fillplane.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * A polygon cut by the triangles of a lattice: cells that lie wholly in it, and the pieces of the
 * cells that its edge cuts.
 *
 * @param rings shell first, in local coordinates
 * @param whole cells wholly inside
 * @param cut cells that the edge may cut
 * @param pieces the cut cells' triangles, clipped
 */
record Region(List<Ring> rings, int[] whole, int[] cut, List<Piece> pieces) {

  /** Part of a triangle of a cell; a clockwise ring is taken away. */
  record Piece(int cell, int triangle, Ring ring) {}

  /**
   * Cuts a valid polygon.
   *
   * @param margin how near its edge may come to a cell before the cell counts as cut
   */
  static Region of(Polygon polygon, Lattice lattice, double margin) {
    List<Ring> rings = PolygonCutter.rings(polygon, lattice);
    Collector found = new Collector();
    PolygonCutter.show(rings, lattice, margin, found);
    int[] whole = found.whole.build().toArray();
    return new Region(rings, whole, found.cut.build().toArray(), found.pieces);
  }

  private static final class Collector implements CellVisitor {

    private final IntStream.Builder whole = IntStream.builder();
    private final IntStream.Builder cut = IntStream.builder();
    private final List<Piece> pieces = new ArrayList<>();

    @Override
    public void whole(int cell) {
      whole.add(cell);
    }

    @Override
    public void cut(int cell) {
      cut.add(cell);
    }

    @Override
    public void piece(int cell, int triangle, RingBuffer ring) {
      pieces.add(new Piece(cell, triangle, ring.ring()));
    }
  }
}
