package dev.fillplane.surface;

import org.locationtech.jts.geom.Polygon;

/**
 * Sums over the cells and pieces of regions, in a fixed order. A cell that the plane surely does
 * not cut, as its lowest and highest node tell, is one product.
 */
final class FloorSums {

  private final Lattice lattice;
  private final NodeHeights heights;

  FloorSums(Lattice lattice, NodeHeights heights) {
    this.lattice = lattice;
    this.heights = heights;
  }

  /** What lies between a plane and the floor of a region with these cells. */
  Prisms prisms(Region region, RoomCells cells, double elevation, double slopeX, double slopeY) {
    PlaneSum sum = plane(elevation, slopeX, slopeY);
    for (int i = 0; i < cells.count(); i++) {
      int cell = cells.cell()[i];
      if (sum.isClear(cell)) {
        sum.addClear(cells.area()[i], cells.x()[i], cells.y()[i], cells.elevation()[i]);
      }
    }
    for (int cell : region.whole()) {
      if (!sum.isClear(cell)) {
        sum.addWhole(cell);
      }
    }
    for (Region.Piece piece : region.pieces()) {
      if (!sum.isClear(piece.cell())) {
        Ring ring = piece.ring();
        sum.addPiece(piece.cell(), piece.triangle(), ring.x(), ring.y(), ring.size());
      }
    }
    return sum.sum();
  }

  /**
   * The same in a polygon.
   *
   * @param margin how near its edge may come to a cell before the cell is cut
   */
  Prisms prisms(Polygon part, double margin, double elevation, double slopeX, double slopeY) {
    PlaneSum sum = plane(elevation, slopeX, slopeY);
    PolygonCutter.show(PolygonCutter.rings(part, lattice), lattice, margin, sum);
    return sum.sum();
  }

  private PlaneSum plane(double elevation, double slopeX, double slopeY) {
    double base = elevation + slopeX * lattice.originX() + slopeY * lattice.originY();
    return new PlaneSum(lattice, heights, base, slopeX, slopeY);
  }

  /** Cells of a region, whole ones first. */
  RoomCells cells(Region region) {
    CellSums sums = new CellSums(lattice, region.whole().length + region.cut().length);
    double cellArea = lattice.cell() * lattice.cell();
    for (int cell : region.whole()) {
      double x = lattice.centreX(cell);
      sums.add(cell, cellArea, x, lattice.centreY(cell), heights.mean(cell));
    }
    for (Region.Piece piece : region.pieces()) {
      addPiece(sums, piece);
    }
    return sums.cells();
  }

  private void addPiece(CellSums sums, Region.Piece piece) {
    double[] x = piece.ring().x();
    double[] y = piece.ring().y();
    for (int i = 1; i < x.length - 1; i++) {
      double twice = (x[i] - x[0]) * (y[i + 1] - y[0]) - (x[i + 1] - x[0]) * (y[i] - y[0]);
      double midX = (x[0] + x[i] + x[i + 1]) / 3;
      double midY = (y[0] + y[i] + y[i + 1]) / 3;
      sums.add(piece.cell(), twice / 2, midX, midY, floor(piece, midX, midY));
    }
  }

  private double floor(Region.Piece piece, double x, double y) {
    double east = x - lattice.centreX(piece.cell());
    double north = y - lattice.centreY(piece.cell());
    return heights.at(piece.cell(), piece.triangle(), east, north);
  }
}
