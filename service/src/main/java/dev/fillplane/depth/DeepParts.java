package dev.fillplane.depth;

import dev.fillplane.surface.FloorSample;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The parts of a floor where the pour is deeper than some depth, as they can be chalked on the
 * floor, within 2 cm of a lattice as fine as the cells.
 */
public final class DeepParts {

  private final FloorSample floor;
  private final DepthField field;

  private DeepParts(DepthField field) {
    this.field = field;
    this.floor = field.floor();
  }

  /** For each room, in their order, its parts deeper than {@code depth}, the largest first. */
  public static List<List<Polygon>> of(DepthField field, double depth) {
    DeepParts parts = new DeepParts(field);
    CarriedNodes nodes = CarriedNodes.of(parts.floor.columns(), parts.floor.rows(), parts.depths());
    List<List<Polygon>> byRoom = new ArrayList<>();
    for (var room : parts.floor.rooms()) {
      byRoom.add(
          HighParts.of(nodes, depth, room.outline().polygon(), parts::onPlan).stream()
              .map(part -> HighParts.outline(part).polygon())
              .toList());
    }
    return byRoom;
  }

  private double[] depths() {
    double[] depths = new double[floor.columns() * floor.rows()];
    for (int row = 0; row < floor.rows(); row++) {
      for (int column = 0; column < floor.columns(); column++) {
        int node = floor.centre(column, row);
        depths[row * floor.columns() + column] =
            floor.inRoom(node) ? field.nodeDepth(node) : Double.NaN;
      }
    }
    return depths;
  }

  private Coordinate onPlan(Coordinate node) {
    return new Coordinate(
        floor.originX() + (node.x + 0.5) * floor.cell(),
        floor.originY() + (node.y + 0.5) * floor.cell());
  }
}
