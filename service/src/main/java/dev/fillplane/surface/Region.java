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

  /** Parts of a squared cell; what is smaller is rounding. */
  private static final double SLIVER = 1e-14;

  /** Part of a triangle of a cell; a clockwise ring is taken away. */
  record Piece(int cell, int triangle, Ring ring) {}

  /**
   * Cuts a valid polygon.
   *
   * @param margin how near its edge may come to a cell before the cell counts as cut
   */
  static Region of(Polygon polygon, Lattice lattice, double margin) {
    List<Ring> rings = rings(polygon, lattice);
    CellMarks marks = new CellMarks(lattice, rings, margin);
    IntStream.Builder whole = IntStream.builder();
    IntStream.Builder cut = IntStream.builder();
    List<Piece> pieces = new ArrayList<>();
    for (int row = marks.firstRow(); row <= marks.lastRow(); row++) {
      for (int cell : marks.inside(row)) {
        whole.add(cell);
      }
      int[] cells = marks.cut(row);
      cutRow(rings, lattice, row, cells, pieces);
      for (int cell : cells) {
        cut.add(cell);
      }
    }
    return new Region(rings, whole.build().toArray(), cut.build().toArray(), pieces);
  }

  private static List<Ring> rings(Polygon polygon, Lattice lattice) {
    double x = lattice.originX();
    double y = lattice.originY();
    List<Ring> rings = new ArrayList<>();
    rings.add(Ring.of(polygon.getExteriorRing().getCoordinates(), x, y, true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(Ring.of(polygon.getInteriorRingN(i).getCoordinates(), x, y, false));
    }
    return rings;
  }

  private static void cutRow(
      List<Ring> rings, Lattice lattice, int row, int[] cells, List<Piece> pieces) {
    double size = lattice.cell();
    for (Ring ring : rings) {
      // The outer rows and columns reach on, so that nothing is lost where the box ends.
      Ring strip = row == 0 ? ring : ring.clip(0, 1, -row * size);
      strip = row == lattice.rows() - 1 ? strip : strip.clip(0, -1, (row + 1) * size);
      for (int cell : cells) {
        int column = lattice.columnOf(cell);
        Ring box = column == 0 ? strip : strip.clip(1, 0, -column * size);
        box = column == lattice.columns() - 1 ? box : box.clip(-1, 0, (column + 1) * size);
        cutCell(box, lattice, cell, pieces);
      }
    }
  }

  /** Triangles 0 to 3: south, east, north, west. */
  private static void cutCell(Ring box, Lattice lattice, int cell, List<Piece> pieces) {
    double sliver = SLIVER * lattice.cell() * lattice.cell();
    if (box.size() < 3) {
      return;
    }
    double rising = lattice.centreX(cell) - lattice.centreY(cell);
    double falling = lattice.centreX(cell) + lattice.centreY(cell);
    Ring southEast = box.clip(1, -1, -rising);
    Ring northWest = box.clip(-1, 1, rising);
    Ring[] triangles = {
      southEast.clip(-1, -1, falling),
      southEast.clip(1, 1, -falling),
      northWest.clip(1, 1, -falling),
      northWest.clip(-1, -1, falling)
    };
    for (int i = 0; i < triangles.length; i++) {
      if (triangles[i].size() > 2 && Math.abs(triangles[i].area()) > sliver) {
        pieces.add(new Piece(cell, i, triangles[i]));
      }
    }
  }
}
