package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/** Cuts a polygon by the triangles of a lattice. */
final class PolygonCutter {

  /** Parts of a squared cell; what is smaller is rounding. */
  private static final double SLIVER = 1e-14;

  private final Lattice lattice;
  private final CellVisitor visitor;
  private final CellMarks marks;
  private final RingBuffer[] buffers = new RingBuffer[8];

  private PolygonCutter(Lattice lattice, CellMarks marks, CellVisitor visitor) {
    this.lattice = lattice;
    this.marks = marks;
    this.visitor = visitor;
    for (int i = 0; i < buffers.length; i++) {
      buffers[i] = new RingBuffer();
    }
  }

  /** The rings of a valid polygon in local coordinates, shell first. */
  static List<Ring> rings(Polygon polygon, Lattice lattice) {
    double x = lattice.originX();
    double y = lattice.originY();
    List<Ring> rings = new ArrayList<>();
    rings.add(Ring.of(polygon.getExteriorRing().getCoordinates(), x, y, true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(Ring.of(polygon.getInteriorRingN(i).getCoordinates(), x, y, false));
    }
    return rings;
  }

  /**
   * Shows the cells of a polygon.
   *
   * @param rings of the polygon
   * @param margin how near its edge may come to a cell before the cell counts as cut
   */
  static void show(List<Ring> rings, Lattice lattice, double margin, CellVisitor visitor) {
    CellMarks marks = new CellMarks(lattice, rings, margin);
    PolygonCutter cutter = new PolygonCutter(lattice, marks, visitor);
    for (int row = marks.firstRow(); row <= marks.lastRow(); row++) {
      Stopped.ifInterrupted();
      cutter.showRow(row, rings);
    }
  }

  private void showRow(int row, List<Ring> rings) {
    int first = row * lattice.columns();
    for (int column = marks.firstColumn(); column <= marks.lastColumn(); column++) {
      if (marks.isInside(column, row)) {
        visitor.whole(first + column);
      }
    }
    for (Ring ring : rings) {
      buffers[0].set(ring);
      cutRow(row);
    }
    for (int column = marks.firstColumn(); column <= marks.lastColumn(); column++) {
      if (marks.isCut(column, row)) {
        visitor.cut(first + column);
      }
    }
  }

  /** The outer rows and columns reach on, so that nothing is lost where the box ends. */
  private void cutRow(int row) {
    double size = lattice.cell();
    RingBuffer strip = row == 0 ? buffers[0] : buffers[0].clip(0, 1, -row * size, buffers[1]);
    strip = row == lattice.rows() - 1 ? strip : strip.clip(0, -1, (row + 1) * size, buffers[2]);
    for (int column = marks.firstColumn(); column <= marks.lastColumn(); column++) {
      if (marks.isCut(column, row)) {
        RingBuffer box = column == 0 ? strip : strip.clip(1, 0, -column * size, buffers[3]);
        boolean last = column == lattice.columns() - 1;
        box = last ? box : box.clip(-1, 0, (column + 1) * size, buffers[4]);
        int cell = row * lattice.columns() + column;
        if (box.size() > 2 && !visitor.box(cell, box)) {
          cutCell(box, cell);
        }
      }
    }
  }

  private void cutCell(RingBuffer box, int cell) {
    double rising = lattice.centreX(cell) - lattice.centreY(cell);
    double falling = lattice.centreX(cell) + lattice.centreY(cell);
    RingBuffer southEast = box.clip(1, -1, -rising, buffers[5]);
    RingBuffer northWest = box.clip(-1, 1, rising, buffers[6]);
    show(cell, 0, southEast.clip(-1, -1, falling, buffers[7]));
    show(cell, 1, southEast.clip(1, 1, -falling, buffers[7]));
    show(cell, 2, northWest.clip(1, 1, -falling, buffers[7]));
    show(cell, 3, northWest.clip(-1, -1, falling, buffers[7]));
  }

  private void show(int cell, int triangle, RingBuffer ring) {
    double sliver = SLIVER * lattice.cell() * lattice.cell();
    if (ring.size() > 2 && Math.abs(ring.area()) > sliver) {
      visitor.piece(cell, triangle, ring);
    }
  }
}
