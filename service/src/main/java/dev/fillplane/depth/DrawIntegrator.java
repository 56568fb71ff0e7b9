package dev.fillplane.depth;

import dev.fillplane.finding.Stopped;
import dev.fillplane.surface.FloorCells;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Prisms;
import java.util.Arrays;
import java.util.List;

/**
 * Clips and integrates each realisation of the floor by itself: in every cell its mean depth less
 * the realisation's residual, not below 0, times the clipped area. What is ground is ground as
 * planned, whatever the floor turns out to be.
 *
 * <p>A cell that the zero depth crosses counts a little less that way than exactly. So the
 * difference between the exact volume of the mean floor and its own sum over cells is added to
 * every draw of the room (likewise for areas); a realisation without residual then gives the exact
 * volume.
 */
final class DrawIntegrator {

  private final FloorSample floor;
  private final DepthRule rule;
  private final FloorResiduals residuals;

  DrawIntegrator(FloorSample floor, DepthRule rule, FloorResiduals residuals) {
    this.floor = floor;
    this.rule = rule;
    this.residuals = residuals;
  }

  VolumeDraws draws(List<Prisms> exact) {
    int count = residuals.count();
    double[] volumes = new double[count];
    double[] wetAreas = new double[count];
    double[][] roomVolumes = new double[count][exact.size()];
    ResidualRows rows = new ResidualRows(residuals);
    for (int room = 0; room < exact.size(); room++) {
      RoomFill mean = new RoomFill(1);
      RoomFill drawn = new RoomFill(count);
      fill(room, rows, mean, drawn);
      double moreVolume = exact.get(room).fillVolume() - mean.volume(0);
      double moreArea = exact.get(room).fillArea() - mean.area(0);
      for (int draw = 0; draw < count; draw++) {
        Stopped.ifInterrupted();
        roomVolumes[draw][room] = Math.max(0, drawn.volume(draw) + moreVolume);
        volumes[draw] += roomVolumes[draw][room];
        double wet = drawn.area(draw) + moreArea;
        wetAreas[draw] += Math.max(0, Math.min(exact.get(room).area(), wet));
      }
    }
    return new VolumeDraws(volumes, wetAreas, roomVolumes, reaches());
  }

  private void fill(int room, ResidualRows rows, RoomFill mean, RoomFill drawn) {
    FloorCells cells = floor.cells(room);
    for (int i = 0; i < cells.count(); i++) {
      double x = cells.x()[i];
      double y = cells.y()[i];
      double depth = rule.at(room, x, y, cells.elevation()[i]);
      mean.add(cells.area()[i], depth, ResidualRows.Row.NONE);
      drawn.add(cells.area()[i], depth, rows.at(residuals.cellAt(x, y)));
    }
  }

  /** A residual holds for its whole coarse cell, so the least depth in each tells all. */
  private double[] reaches() {
    double[] least = leastDepths();
    double[] reaches = new double[residuals.count()];
    for (int draw = 0; draw < reaches.length; draw++) {
      Stopped.ifInterrupted();
      reaches[draw] = Double.NEGATIVE_INFINITY;
      for (int coarse = 0; coarse < least.length; coarse++) {
        if (least[coarse] < Double.POSITIVE_INFINITY) {
          double reach = residuals.residual(draw, coarse) - least[coarse];
          reaches[draw] = Math.max(reaches[draw], reach);
        }
      }
    }
    return reaches;
  }

  private double[] leastDepths() {
    FloorPoints points = floor.points();
    double[] least = new double[0];
    for (int i = 0; i < points.count(); i++) {
      int coarse = residuals.cellAt(points.x()[i], points.y()[i]);
      if (coarse >= least.length) {
        int known = least.length;
        least = Arrays.copyOf(least, Math.max(coarse + 1, 2 * known));
        Arrays.fill(least, known, least.length, Double.POSITIVE_INFINITY);
      }
      double depth = rule.at(points.x()[i], points.y()[i], points.elevation()[i]);
      least[coarse] = Math.min(least[coarse], depth);
    }
    return least;
  }
}
