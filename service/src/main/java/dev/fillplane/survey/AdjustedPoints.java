package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the adjusted points and the suspects among them. */
final class AdjustedPoints {

  private final Network network;
  private final PlaneEquations planes;
  private final List<AdjustedPoint> points = new ArrayList<>();
  private final List<Suspect> suspects = new ArrayList<>();

  AdjustedPoints(Network network, PlaneEquations planes) {
    this.network = network;
    this.planes = planes;
  }

  /** Adjusts {@code point}, which was read at least once. */
  void add(int point, String name, PointPositions positions) {
    PointAdjustment adjustment = new PointAdjustment(network, planes, point);
    points.add(
        new AdjustedPoint(
            name,
            positions.x(point),
            positions.y(point),
            adjustment.elevation(),
            adjustment.deviation(),
            adjustment.residual()));
    adjustment.suspect(name).ifPresent(suspects::add);
  }

  /** In the order in which they were added. */
  List<AdjustedPoint> all() {
    return points;
  }

  /** The worst first; equally bad ones in the order in which they were added. */
  List<Suspect> suspects() {
    suspects.sort(Comparator.comparingDouble(Suspect::standardized).reversed());
    return suspects;
  }
}
