package dev.fillplane.surface;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** Collects the points of a sampled floor at which a piecewise-linear function may be extreme. */
final class PointCollector {

  private final Lattice lattice;
  private final NodeHeights heights;
  private final RoomLocator locator;

  PointCollector(Lattice lattice, NodeHeights heights, RoomLocator locator) {
    this.lattice = lattice;
    this.heights = heights;
    this.locator = locator;
  }

  /**
   * For each node whether it lies in one of some rooms or on its edge.
   *
   * @param rooms their numbers
   * @param regions theirs
   */
  boolean[] nodesInRooms(List<Integer> rooms, List<Region> regions) {
    boolean[] inRoom = new boolean[lattice.nodes()];
    for (int i = 0; i < regions.size(); i++) {
      for (int cell : regions.get(i).whole()) {
        markAll(inRoom, cell);
      }
      for (int cell : regions.get(i).cut()) {
        markThoseInside(inRoom, cell, rooms.get(i));
      }
    }
    return inRoom;
  }

  private void markAll(boolean[] inRoom, int cell) {
    for (int i = 0; i < 4; i++) {
      inRoom[lattice.corner(cell, i)] = true;
    }
    inRoom[lattice.centre(cell)] = true;
  }

  private void markThoseInside(boolean[] inRoom, int cell, int room) {
    for (int i = 0; i <= 4; i++) {
      int node = i < 4 ? lattice.corner(cell, i) : lattice.centre(cell);
      if (!inRoom[node]) {
        Coordinate position =
            new Coordinate(
                lattice.originX() + lattice.nodeX(node), lattice.originY() + lattice.nodeY(node));
        inRoom[node] = locator.location(room, position) != Location.EXTERIOR;
      }
    }
  }

  /** The nodes in rooms, then the points of the outlines. */
  FloorPoints points(boolean[] inRoom, List<Region> regions) {
    OutlinePoints outline = new OutlinePoints(lattice.cell());
    regions.forEach(region -> region.rings().forEach(outline::add));
    double[] edgeX = outline.x();
    double[] edgeY = outline.y();
    int nodes = 0;
    for (boolean in : inRoom) {
      nodes += in ? 1 : 0;
    }
    double[] x = new double[nodes + edgeX.length];
    double[] y = new double[x.length];
    double[] elevation = new double[x.length];
    int n = 0;
    for (int node = 0; node < inRoom.length; node++) {
      if (inRoom[node]) {
        x[n] = lattice.originX() + lattice.nodeX(node);
        y[n] = lattice.originY() + lattice.nodeY(node);
        elevation[n++] = heights.at(node);
      }
    }
    for (int i = 0; i < edgeX.length; i++) {
      x[n] = lattice.originX() + edgeX[i];
      y[n] = lattice.originY() + edgeY[i];
      elevation[n++] = heights.at(edgeX[i], edgeY[i]);
    }
    return new FloorPoints(x, y, elevation);
  }
}
