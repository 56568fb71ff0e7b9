package dev.fillplane.survey;

import java.util.Arrays;
import java.util.Optional;

/**
 * One point for adjusted planes: its elevation, the deviation of that, and how its readings fit.
 *
 * <p>A reading says {@code plane - reading}. Its residual r is that minus the adjusted elevation;
 * the variance of r is the reading's own less that of the adjusted {@code plane - elevation}. The
 * share of its own variance that is left is its redundancy: without this reading the others would
 * give an elevation from which it is off by r over that share.
 */
final class PointAdjustment {

  /** A reading that is off by more of its own standard deviations is suspect. */
  static final double SUSPECT = 3;

  /** Below this share of redundancy a reading is not checked by any other. */
  private static final double UNCHECKED = 1e-6;

  /** Residuals this close count as equally far off; the positive one is told. */
  private static final double EQUAL = 1e-9;

  private final Network network;
  private final PlaneEquations planes;
  private final Sight sight;
  private final boolean held;
  private final double elevation;
  private final double[] planeCovariance;
  private final double variance;
  private double residual;
  private double standardized;
  private double offOthers;
  private double expected;

  PointAdjustment(Network network, PlaneEquations planes, int point) {
    this.network = network;
    this.planes = planes;
    sight = new Sight(network, point);
    held = network.isHeld(point);
    double[] measured = new double[sight.groups()];
    Arrays.setAll(measured, g -> planes.plane(sight.setup(g), point) - sight.reading(g));
    elevation = held ? network.heldElevation(point) : sight.mean(measured);
    planeCovariance = planeCovariance();
    variance = held ? 0 : 1 / sight.weight() + sight.mean(planeCovariance);
    int from = network.from(point);
    for (int g = 0; g < sight.groups(); g++) {
      int to = network.endOfGroup(point, from);
      // The readings of a group are sorted and equally well checked: the ends are furthest off.
      fit(g, network.reading(from));
      fit(g, network.reading(to - 1));
      from = to;
    }
  }

  /** Covariance of the plane of each group with the mean of the planes that gives the point. */
  private double[] planeCovariance() {
    double[] all = new double[sight.groups()];
    for (int g = 0; g < all.length && !held; g++) {
      double[] row = new double[all.length];
      for (int h = 0; h < row.length; h++) {
        row[h] = planes.covariance(sight.setup(g), sight.setup(h), sight.point());
      }
      all[g] = sight.mean(row);
    }
    return all;
  }

  private void fit(int group, double reading) {
    int setup = sight.setup(group);
    double off = planes.plane(setup, sight.point()) - reading - elevation;
    if (furtherOff(off, residual)) {
      residual = off;
    }
    double own = 1 / network.weight(setup);
    double adjusted =
        planes.covariance(setup, setup, sight.point()) - 2 * planeCovariance[group] + variance;
    double redundancy = 1 - adjusted / own;
    if (redundancy < UNCHECKED) {
      return;
    }
    double inDeviations = off / Math.sqrt(own * redundancy);
    if (furtherOff(inDeviations, standardized)) {
      standardized = inDeviations;
      offOthers = off / redundancy;
      expected = elevation + (planeCovariance[group] - variance) / own * offOthers;
    }
  }

  private static boolean furtherOff(double one, double other) {
    double more = Math.abs(one) - Math.abs(other);
    return more > EQUAL || (more > -EQUAL && one > other);
  }

  double elevation() {
    return elevation;
  }

  /** Standard deviation of the elevation. */
  double deviation() {
    return Math.sqrt(Math.max(0, variance));
  }

  /** The residual of the reading that is furthest off. */
  double residual() {
    return residual;
  }

  /** The point as a suspect, if its worst reading is one. */
  Optional<Suspect> suspect(String name) {
    double by = Math.abs(standardized);
    return by > SUSPECT
        ? Optional.of(new Suspect(name, by, offOthers, expected))
        : Optional.empty();
  }
}
