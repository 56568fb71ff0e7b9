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
    if (network.count(point) == 1 && !network.isHeld(point)) {
      addUnchecked(point, name, positions);
      return;
    }
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

  /**
   * The same for a point with one reading, which nothing checks; a scan has a million of them. Its
   * reading fits but for the rounding of a mean of one.
   */
  private void addUnchecked(int point, String name, PointPositions positions) {
    int setup = network.setup(network.from(point));
    double measured = planes.plane(setup, point) - network.reading(network.from(point));
    double variance = 1 / network.weight(setup) + planes.variance(setup, point);
    points.add(
        new AdjustedPoint(
            name,
            positions.x(point),
            positions.y(point),
            measured,
            Math.sqrt(Math.max(0, variance)),
            0));
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
