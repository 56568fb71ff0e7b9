package dev.fillplane.depth;

import dev.fillplane.surface.FloorCells;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import java.util.ArrayList;
import java.util.List;

/**
 * A sampled floor with many equally likely ones about it, made ready to be integrated under one
 * target after another: its cells and points are sorted by the coarse cells in which one residual
 * holds. Immutable and safe to share.
 *
 * @see DepthField#volumes(DrawnFloor)
 */
public final class DrawnFloor {

  private final FloorSample floor;
  private final int count;
  private final ResidualRow[] rows;
  private final List<CoarseCells> rooms = new ArrayList<>();
  private final int[] coarseOfPoint;

  private DrawnFloor(FloorSample floor, FloorResiduals residuals) {
    this.floor = floor;
    count = residuals.count();
    int most = 0;
    for (int room = 0; room < floor.rooms().size(); room++) {
      FloorCells cells = floor.cells(room);
      int[] coarse = coarse(residuals, cells.x(), cells.y());
      rooms.add(CoarseCells.of(coarse));
      most = Math.max(most, largest(coarse));
    }
    FloorPoints points = floor.points();
    coarseOfPoint = coarse(residuals, points.x(), points.y());
    most = Math.max(most, largest(coarseOfPoint));
    rows = new ResidualRow[most + 1];
    for (int coarse : coarseOfPoint) {
      find(residuals, coarse);
    }
    rooms.forEach(room -> room.each((coarse, from, to) -> find(residuals, coarse)));
  }

  /** Sorts the cells of a floor. */
  public static DrawnFloor of(FloorSample floor, FloorResiduals residuals) {
    return new DrawnFloor(floor, residuals);
  }

  private static int[] coarse(FloorResiduals residuals, double[] x, double[] y) {
    int[] coarse = new int[x.length];
    for (int i = 0; i < coarse.length; i++) {
      coarse[i] = residuals.cellAt(x[i], y[i]);
    }
    return coarse;
  }

  private static int largest(int[] coarse) {
    int largest = 0;
    for (int cell : coarse) {
      largest = Math.max(largest, cell);
    }
    return largest;
  }

  private void find(FloorResiduals residuals, int coarse) {
    if (rows[coarse] == null) {
      rows[coarse] = ResidualRow.of(residuals.residuals(coarse));
    }
  }

  FloorSample floor() {
    return floor;
  }

  /** How many realisations there are. */
  int count() {
    return count;
  }

  /** The cells of a room, by coarse cell. */
  CoarseCells room(int room) {
    return rooms.get(room);
  }

  /** The residuals of a coarse cell in which cells or points lie. */
  ResidualRow row(int coarse) {
    return rows[coarse];
  }

  /** For the points of the floor the coarse cell that each lies in. */
  int coarse(int point) {
    return coarseOfPoint[point];
  }

  /** One more than the largest number of a coarse cell. */
  int coarseCells() {
    return rows.length;
  }
}
