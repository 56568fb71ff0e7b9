package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.material.DataSheet;
import dev.fillplane.surface.Deviations;
import dev.fillplane.surface.FittedSurface;
import dev.fillplane.surface.FloorNodes;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.NextReading;
import dev.fillplane.surface.NextReadings;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.surface.Variogram;
import dev.fillplane.surface.VolumeSpread;
import dev.fillplane.target.Plane;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * What the summary of a surface says of more readings: where they help, and how unsure it is.
 * Nothing of a dense survey, in which one more reading changes nothing.
 */
final class MoreReadings {

  private MoreReadings() {}

  static SurfaceSummary told(
      PlanRequest request,
      FittedSurface fitted,
      Spots spots,
      FloorSample sample,
      DepthField field,
      Plane target,
      DataSheet sheet) {
    if (!(fitted instanceof KrigedSurface surface)) {
      return fitted.summary();
    }
    FloorNodes nodes = FloorNodes.of(sample, target.elevation(), target.slopeX(), target.slopeY());
    VolumeSpread spread = VolumeSpread.after(surface, nodes);
    Deviations deviations = Deviations.of(nodes, spread);
    Reserve reserve = new Reserve(field.volume(), field.pouredArea(), sheet, request.confidence());
    List<Polygon> rooms = request.rooms().stream().map(room -> room.outline().polygon()).toList();
    List<NextReading> next =
        NextReadings.choose(
                nodes, spread, spots, rooms, error(request), request.surface().nextReadings())
            .stream()
            .map(choice -> told(choice, reserve))
            .toList();
    return surface.summary().with(next, deviations);
  }

  private static NextReading told(NextReadings.Choice choice, Reserve reserve) {
    double saves = reserve.bags(choice.before()) - reserve.bags(choice.after());
    return new NextReading(choice.x(), choice.y(), Math.max(0, saves));
  }

  /** Variance of one more reading, as the surface takes it. */
  private static double error(PlanRequest request) {
    double told = request.survey().readingError() * request.survey().readingError();
    return request
        .surface()
        .variogram()
        .map(Variogram::nugget)
        .orElse(Math.max(KrigedSurface.LEAST_VARIANCE, told));
  }
}
