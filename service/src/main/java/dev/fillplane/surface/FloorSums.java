package dev.fillplane.surface;

import dev.fillplane.room.Position;
import java.util.List;

/** Sums over the cells and pieces of regions, in a fixed order. */
final class FloorSums {

  private final Lattice lattice;
  private final NodeHeights heights;

  FloorSums(Lattice lattice, NodeHeights heights) {
    this.lattice = lattice;
    this.heights = heights;
  }

  /** What lies between a plane and the floor of a region. */
  Prisms prisms(Region region, double elevation, double slopeX, double slopeY) {
    double base = elevation + slopeX * lattice.originX() + slopeY * lattice.originY();
    LocalPlane plane = new LocalPlane(base, slopeX, slopeY);
    PrismSum sum = new PrismSum();
    for (int cell : region.whole()) {
      addWhole(sum, cell, plane);
    }
    for (Region.Piece piece : region.pieces()) {
      if (heights.knows(piece.cell())) {
        sum.add(piece.ring(), depths(piece, plane));
      }
    }
    return sum.sum();
  }

  private void addWhole(PrismSum sum, int cell, LocalPlane plane) {
    double[] corners = new double[4];
    for (int i = 0; i < 4; i++) {
      corners[i] = depth(lattice.corner(cell, i), plane);
    }
    double side = lattice.cell();
    sum.addCell(corners, depth(lattice.centre(cell), plane), side);
  }

  private double depth(int node, LocalPlane plane) {
    return plane.at(lattice.nodeX(node), lattice.nodeY(node)) - heights.at(node);
  }

  private double[] depths(Region.Piece piece, LocalPlane plane) {
    Ring ring = piece.ring();
    double[] depths = new double[ring.size()];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = plane.at(ring.x()[i], ring.y()[i]) - floor(piece, ring.x()[i], ring.y()[i]);
    }
    return depths;
  }

  private double floor(Region.Piece piece, double x, double y) {
    double east = x - lattice.centreX(piece.cell());
    double north = y - lattice.centreY(piece.cell());
    return heights.at(piece.cell(), piece.triangle(), east, north);
  }

  /** Centroid of all regions by area. */
  Position centroid(List<Region> regions) {
    double area = 0;
    double x = 0;
    double y = 0;
    for (Region region : regions) {
      FloorCells cells = cells(region);
      for (int i = 0; i < cells.count(); i++) {
        area += cells.area()[i];
        x += cells.area()[i] * (cells.x()[i] - lattice.originX());
        y += cells.area()[i] * (cells.y()[i] - lattice.originY());
      }
    }
    return new Position(lattice.originX() + x / area, lattice.originY() + y / area);
  }

  /** Cells of a region, whole ones first. */
  FloorCells cells(Region region) {
    CellSums sums = new CellSums(lattice, region.whole().length + region.cut().length);
    double cellArea = lattice.cell() * lattice.cell();
    for (int cell : region.whole()) {
      double corners = 0;
      for (int i = 0; i < 4; i++) {
        corners += heights.at(lattice.corner(cell, i));
      }
      double mean = corners / 6 + heights.at(lattice.centre(cell)) / 3;
      sums.add(cell, cellArea, lattice.centreX(cell), lattice.centreY(cell), mean);
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

  /** A plane in local coordinates. */
  private record LocalPlane(double base, double slopeX, double slopeY) {
    double at(double x, double y) {
      return base + slopeX * x + slopeY * y;
    }
  }
}
