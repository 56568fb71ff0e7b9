package dev.fillplane.render;

import dev.fillplane.depth.CarriedNodes;
import dev.fillplane.depth.Grid;
import dev.fillplane.depth.LevelRings;
import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;

/** Where a grid's values are at least so large, as a path in px. */
final class Bands {

  private final Grid grid;
  private final View view;
  private final CarriedNodes nodes;

  Bands(Grid grid, View view) {
    this.grid = grid;
    this.view = view;
    nodes = CarriedNodes.of(grid);
  }

  /** All rings; those that shrink to nothing at the picture's accuracy are left out. */
  PathData from(double level) {
    PathData path = new PathData();
    for (Coordinate[] ring : LevelRings.above(nodes, level)) {
      Coordinate[] simple =
          PathData.simple(Arrays.stream(ring).map(this::inView).toArray(Coordinate[]::new));
      if (simple.length > 3) {
        path.ring(simple);
      }
    }
    return path;
  }

  private Coordinate inView(Coordinate node) {
    return view.at(
        grid.originX() + (node.x + 0.5) * grid.cell(),
        grid.originY() + (node.y + 0.5) * grid.cell());
  }
}
