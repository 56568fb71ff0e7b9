package dev.fillplane.depth;

import dev.fillplane.surface.FloorCells;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Prisms;
import dev.fillplane.target.Plane;
import java.util.Arrays;
import java.util.List;

/**
 * Clips and integrates each realisation of the floor by itself: in every cell its mean depth less
 * the realisation's residual, not below 0, times the clipped area.
 *
 * <p>A cell that the zero depth crosses counts a little less that way than exactly. So the
 * difference between the exact volume of the mean floor and its own sum over cells is added to
 * every draw of the room (likewise for areas); a realisation without residual then gives the exact
 * volume.
 */
final class DrawIntegrator {

  private final FloorSample floor;
  private final Plane target;
  private final FloorResiduals residuals;

  DrawIntegrator(FloorSample floor, Plane target, FloorResiduals residuals) {
    this.floor = floor;
    this.target = target;
    this.residuals = residuals;
  }

  VolumeDraws draws(List<Prisms> exact) {
    int count = residuals.count();
    double[] volumes = new double[count];
    double[] wetAreas = new double[count];
    double[][] roomVolumes = new double[count][exact.size()];
    for (int room = 0; room < exact.size(); room++) {
      RoomCells cells = cells(room);
      double[] mean = cells.fill(0, null);
      double moreVolume = exact.get(room).fillVolume() - mean[0];
      double moreArea = exact.get(room).fillArea() - mean[1];
      for (int draw = 0; draw < count; draw++) {
        double[] fill = cells.fill(draw, residuals);
        roomVolumes[draw][room] = Math.max(0, fill[0] + moreVolume);
        volumes[draw] += roomVolumes[draw][room];
        wetAreas[draw] += Math.max(0, Math.min(exact.get(room).area(), fill[1] + moreArea));
      }
    }
    return new VolumeDraws(volumes, wetAreas, roomVolumes, reaches());
  }

  private RoomCells cells(int room) {
    FloorCells cells = floor.cells(room);
    double[] depth = new double[cells.count()];
    int[] coarse = new int[cells.count()];
    for (int i = 0; i < depth.length; i++) {
      depth[i] = target.at(cells.x()[i], cells.y()[i]) - cells.elevation()[i];
      coarse[i] = residuals.cellAt(cells.x()[i], cells.y()[i]);
    }
    return new RoomCells(cells.area(), depth, coarse);
  }

  /** A residual holds for its whole coarse cell, so the least depth in each tells all. */
  private double[] reaches() {
    double[] least = leastDepths();
    double[] reaches = new double[residuals.count()];
    for (int draw = 0; draw < reaches.length; draw++) {
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
      double depth = target.at(points.x()[i], points.y()[i]) - points.elevation()[i];
      least[coarse] = Math.min(least[coarse], depth);
    }
    return least;
  }

  /** Cells of one room: area, mean depth over the mean floor, coarse cell. */
  private record RoomCells(double[] area, double[] depth, int[] coarse) {

    /** Volume and wet area over one realisation, or over the mean floor where none is given. */
    double[] fill(int draw, FloorResiduals residuals) {
      double volume = 0;
      double wet = 0;
      for (int i = 0; i < area.length; i++) {
        double residual = residuals == null ? 0 : residuals.residual(draw, coarse[i]);
        double deep = depth[i] - residual;
        if (deep > 0) {
          volume += area[i] * deep;
          wet += area[i];
        }
      }
      return new double[] {volume, wet};
    }
  }
}
