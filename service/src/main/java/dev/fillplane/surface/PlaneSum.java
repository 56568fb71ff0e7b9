package dev.fillplane.surface;

/** Sums what lies between one plane and the floor, cell by cell. For one thread. */
final class PlaneSum implements CellVisitor {

  private final Lattice lattice;
  private final NodeHeights heights;
  private final double base;
  private final double slopeX;
  private final double slopeY;
  private final double tilt;
  private final double cellArea;
  private final PrismSum sum = new PrismSum();
  private final BoxSum boxes = new BoxSum();
  private double[] depths = new double[16];

  /** With a plane in local coordinates. */
  PlaneSum(Lattice lattice, NodeHeights heights, double base, double slopeX, double slopeY) {
    this.lattice = lattice;
    this.heights = heights;
    this.base = base;
    this.slopeX = slopeX;
    this.slopeY = slopeY;
    tilt = (Math.abs(slopeX) + Math.abs(slopeY)) * lattice.cell() / 2;
    cellArea = lattice.cell() * lattice.cell();
  }

  /** Whether all of a cell surely lies on one side of the plane, by more than rounding. */
  boolean isClear(int cell) {
    double plane = at(lattice.centreX(cell), lattice.centreY(cell));
    double over = plane - tilt - heights.highest(cell);
    double under = heights.lowest(cell) - plane - tilt;
    return Math.max(over, under) > PrismSum.NOTHING;
  }

  private double at(double x, double y) {
    return base + slopeX * x + slopeY * y;
  }

  /** Adds a part that is clear, by its centroid and its mean floor. */
  void addClear(double area, double x, double y, double floor) {
    sum.addClear(area, area * (at(x, y) - floor));
  }

  @Override
  public void whole(int cell) {
    if (isClear(cell)) {
      addClear(cellArea, lattice.centreX(cell), lattice.centreY(cell), heights.mean(cell));
    } else {
      addWhole(cell);
    }
  }

  /** Adds a whole cell. */
  void addWhole(int cell) {
    double[] corners = new double[4];
    for (int i = 0; i < 4; i++) {
      corners[i] = depth(lattice.corner(cell, i));
    }
    sum.addCell(corners, depth(lattice.centre(cell)), lattice.cell());
  }

  private double depth(int node) {
    return at(lattice.nodeX(node), lattice.nodeY(node)) - heights.at(node);
  }

  /** A clear one needs no cut by triangles. */
  @Override
  public boolean box(int cell, RingBuffer ring) {
    if (heights.knows(cell) && isClear(cell)) {
      boxes.of(ring, lattice.centreX(cell), lattice.centreY(cell));
      double plane = boxes.plane(at(lattice.centreX(cell), lattice.centreY(cell)), slopeX, slopeY);
      sum.addClear(boxes.area(), plane - heights.integral(cell, boxes));
      return true;
    }
    return false;
  }

  @Override
  public void piece(int cell, int triangle, RingBuffer ring) {
    if (heights.knows(cell)) {
      addPiece(cell, triangle, ring.x(), ring.y(), ring.size());
    }
  }

  /** Adds a ring on one triangle of a cell. */
  void addPiece(int cell, int triangle, double[] x, double[] y, int size) {
    if (depths.length < size) {
      depths = new double[2 * size];
    }
    double centreX = lattice.centreX(cell);
    double centreY = lattice.centreY(cell);
    for (int i = 0; i < size; i++) {
      double floor = heights.at(cell, triangle, x[i] - centreX, y[i] - centreY);
      depths[i] = at(x[i], y[i]) - floor;
    }
    sum.add(x, y, depths, size);
  }

  Prisms sum() {
    return sum.sum();
  }
}
