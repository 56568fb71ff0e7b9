package dev.fillplane.depth;

import dev.fillplane.finding.Stopped;
import dev.fillplane.surface.FloorCells;
import dev.fillplane.surface.FloorPoints;
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

  private final DrawnFloor drawn;
  private final DepthRule rule;

  DrawIntegrator(DrawnFloor drawn, DepthRule rule) {
    this.drawn = drawn;
    this.rule = rule;
  }

  VolumeDraws draws(List<Prisms> exact) {
    int count = drawn.count();
    double[] volumes = new double[count];
    double[] wetAreas = new double[count];
    double[][] roomVolumes = new double[count][exact.size()];
    for (int room = 0; room < exact.size(); room++) {
      Stopped.ifInterrupted();
      RoomFill fill = fill(room);
      double moreVolume = exact.get(room).fillVolume() - fill.meanVolume();
      double moreArea = exact.get(room).fillArea() - fill.meanArea();
      for (int draw = 0; draw < count; draw++) {
        roomVolumes[draw][room] = Math.max(0, fill.volume(draw) + moreVolume);
        volumes[draw] += roomVolumes[draw][room];
        double wet = fill.area(draw) + moreArea;
        wetAreas[draw] += Math.max(0, Math.min(exact.get(room).area(), wet));
      }
    }
    return new VolumeDraws(volumes, wetAreas, roomVolumes, reaches());
  }

  private RoomFill fill(int room) {
    RoomFill fill = new RoomFill(drawn.count());
    FloorCells cells = drawn.floor().cells(room);
    CoarseCells sorted = drawn.room(room);
    sorted.each(
        (coarse, from, to) -> {
          ResidualRow residuals = drawn.row(coarse);
          for (int place = from; place < to; place++) {
            int i = sorted.cell(place);
            double depth = rule.at(room, cells.x()[i], cells.y()[i], cells.elevation()[i]);
            fill.add(cells.area()[i], depth, residuals);
          }
          fill.end(residuals);
        });
    return fill;
  }

  /** A residual holds for its whole coarse cell, so the least depth in each tells all. */
  private double[] reaches() {
    double[] reaches = new double[drawn.count()];
    Arrays.fill(reaches, Double.NEGATIVE_INFINITY);
    double[] least = leastDepths();
    for (int coarse = 0; coarse < least.length; coarse++) {
      Stopped.ifInterrupted();
      if (least[coarse] < Double.POSITIVE_INFINITY) {
        double[] values = drawn.row(coarse).values();
        for (int draw = 0; draw < reaches.length; draw++) {
          reaches[draw] = Math.max(reaches[draw], values[draw] - least[coarse]);
        }
      }
    }
    return reaches;
  }

  private double[] leastDepths() {
    FloorPoints points = drawn.floor().points();
    double[] least = new double[drawn.coarseCells()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < points.count(); i++) {
      double depth = rule.at(points.x()[i], points.y()[i], points.elevation()[i]);
      int coarse = drawn.coarse(i);
      least[coarse] = Math.min(least[coarse], depth);
    }
    return least;
  }
}
