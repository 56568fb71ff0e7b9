package dev.fillplane.screed;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.Strip;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * In which order rails come out: as the pour leaves each behind, of those that it leaves together
 * from right to left, as ribbons are laid. A finished edge stays.
 */
final class RemovalOrder {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private RemovalOrder() {}

  /** The rails of a bay, as they were listed, each with its place in that order. */
  static List<Rail> of(Bay bay, List<Rail> rails) {
    List<Rail> order =
        rails.stream()
            .filter(rail -> rail.support() != RailSupport.EDGE)
            .sorted(
                Comparator.comparingInt((Rail rail) -> left(bay, rail.to()))
                    .thenComparingDouble(rail -> bay.travel().across(rail.to())))
            .toList();
    List<Rail> all = new ArrayList<>();
    for (Rail rail : rails) {
      int place = order.indexOf(rail);
      all.add(place < 0 ? rail : rail.comingOut(place + 1));
    }
    return all;
  }

  /** The order of the ribbon at a place. */
  private static int left(Bay bay, Position end) {
    Point place = GEOMETRY.createPoint(new Coordinate(end.x(), end.y()));
    return bay.strips().stream()
        .min(Comparator.comparingDouble((Strip strip) -> strip.polygon().distance(place)))
        .map(Strip::order)
        .orElse(0);
  }
}
