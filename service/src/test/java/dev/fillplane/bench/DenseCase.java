package dev.fillplane.bench;

import dev.fillplane.depth.Grid;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.plan.DepthFieldAnswer;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.surface.CellSize;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.survey.Column;
import java.util.List;
import java.util.OptionalDouble;

/** Many readings of a hall of 1,000 m2 by table, and the nodes that their depth field has. */
final class DenseCase {

  private final InventedFloor floor;
  private final PlanRequest ofReadings;
  private final PlanRequest ofElevations;
  private final double[] nodes;
  private final int corners;

  DenseCase(int readings) {
    floor = new InventedFloor(40, 25, readings);
    ofReadings = floor.request(floor.table(Column.READING));
    ofElevations = floor.request(floor.table(Column.ELEVATION));
    double cell =
        CellSize.choose(
            List.of(floor.room()), OptionalDouble.empty(), Place.root(), new Findings());
    FloorSample cells = FloorSample.of(List.of(floor.room()), new Level(), cell);
    corners = (cells.columns() + 1) * (cells.rows() + 1);
    int count = corners + cells.columns() * cells.rows();
    nodes = new double[2 * count];
    for (int node = 0; node < count; node++) {
      nodes[node] = cells.nodeX(node);
      nodes[count + node] = cells.nodeY(node);
    }
  }

  InventedFloor floor() {
    return floor;
  }

  /** All x of the nodes, then all y. */
  double[] nodes() {
    return nodes;
  }

  /** How many of the nodes are corners of cells; they come first. */
  int corners() {
    return corners;
  }

  /** From a table with a column of readings. */
  DepthFieldAnswer readings() {
    return Planner.depthField(ofReadings);
  }

  /** From a table with a column of elevations. */
  DepthFieldAnswer elevations() {
    return Planner.depthField(ofElevations);
  }

  /** From a table of elevations: their mean over the cells. */
  double meanElevation() {
    DepthFieldAnswer answer = elevations();
    Grid grid = answer.depth().grid();
    double sum = 0;
    int count = 0;
    for (double depth : grid.depths()) {
      if (depth != Grid.OUTSIDE) {
        sum += depth;
        count++;
      }
    }
    return answer.target().elevation().orElse(0) - sum / count;
  }

  /** All x, all y, all elevations. */
  double[] told() {
    int count = floor.x().length;
    double[] told = new double[3 * count];
    System.arraycopy(floor.x(), 0, told, 0, count);
    System.arraycopy(floor.y(), 0, told, count, count);
    for (int i = 0; i < count; i++) {
      told[2 * count + i] = -floor.reading()[i];
    }
    return told;
  }
}
