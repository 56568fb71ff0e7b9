package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Where the laser of each setup stands, and whether its plane may be tilted.
 *
 * <p>The plane is tilted about the place that the setup tells, else about the centroid of its
 * readings. It stays level where the readings have no places, or only that one, and where one of
 * them is further away than a laser reaches.
 */
final class Lasers {

  /** No laser of this trade reaches further. */
  static final double REACH = 500;

  /** A tilt below this is none: it moves nothing by a nanometre. */
  private static final double NO_TILT = 1e-12;

  /** Up to so many setups tilts are estimated, three unknowns each. */
  static final int MOST_SETUPS = 300;

  private final double deviation;
  private final double[] x;
  private final double[] y;
  private final double[] reach;

  private Lasers(Survey survey, Observations all) {
    deviation = survey.laserTilt();
    int setups = all.setups().length;
    x = new double[setups];
    y = new double[setups];
    reach = new double[setups];
    Arrays.fill(x, Double.NaN);
    Arrays.fill(y, Double.NaN);
    for (int s = 0; s < survey.setups().size(); s++) {
      x[s] = survey.setups().get(s).x().orElse(Double.NaN);
      y[s] = survey.setups().get(s).y().orElse(Double.NaN);
    }
    int from = 0;
    while (from < all.count()) {
      int to = all.endOfSetup(from);
      place(all, from, to);
      from = to;
    }
  }

  private void place(Observations all, int from, int to) {
    int[] placed = IntStream.range(from, to).filter(all::placed).toArray();
    int setup = all.setup()[from];
    if (placed.length == 0) {
      return;
    }
    if (Double.isNaN(x[setup]) || Double.isNaN(y[setup])) {
      x[setup] = centre(all.x(), placed);
      y[setup] = centre(all.y(), placed);
    }
    double furthest = 0;
    for (int i : placed) {
      double east = all.x()[i] - x[setup];
      double north = all.y()[i] - y[setup];
      furthest = Math.max(furthest, east * east + north * north);
    }
    reach[setup] = Math.max(reach[setup], Math.sqrt(furthest));
  }

  /** Sorted before they are summed, so that their order does not matter to the last bit. */
  private static double centre(double[] coordinates, int[] placed) {
    double[] own = IntStream.of(placed).mapToDouble(i -> coordinates[i]).sorted().toArray();
    double sum = 0;
    for (double one : own) {
      sum += one - own[0];
    }
    return own[0] + sum / own.length;
  }

  /** Errors where a laser stands further from a reading than lasers reach, or x is without y. */
  static Lasers of(Survey survey, Observations all, Place place, Findings findings) {
    Lasers lasers = new Lasers(survey, all);
    for (int s = 0; s < survey.setups().size(); s++) {
      Setup setup = survey.setups().get(s);
      Place there = place.at("setups").at(s);
      if (setup.x().isPresent() != setup.y().isPresent()) {
        String told = setup.x().isPresent() ? "x" : "y";
        findings.error("setup-x-without-y", there.at(told), "setup", setup.id());
      } else if (setup.x().isPresent() && !(lasers.reach[s] <= REACH)) {
        findings.error(
            "laser-too-far",
            there.at("x"),
            "setup",
            setup.id(),
            "distance",
            Amount.of(lasers.reach[s], Dimension.PLAN),
            "limit",
            Amount.of(REACH, Dimension.PLAN));
      }
    }
    return lasers;
  }

  /** Whether there are tilts to look for and too many setups to do so. */
  boolean tooMany() {
    return x.length > MOST_SETUPS
        && deviation > NO_TILT
        && Arrays.stream(reach).anyMatch(one -> one > 0);
  }

  /** Whether the plane of {@code setup} may be tilted. */
  boolean tilts(int setup) {
    return deviation > NO_TILT
        && x.length <= MOST_SETUPS
        && reach[setup] > 0
        && reach[setup] <= REACH;
  }

  /** Standard deviation of each of the two components of a tilt. */
  double deviation() {
    return deviation;
  }

  /** How far its furthest reading is. */
  double reach(int setup) {
    return reach[setup];
  }

  /** How far east of the laser of {@code setup} a place is; 0 where that is not told. */
  double east(int setup, OptionalDouble place) {
    return place.isPresent() && tilts(setup) ? place.getAsDouble() - x[setup] : 0;
  }

  double north(int setup, OptionalDouble place) {
    return place.isPresent() && tilts(setup) ? place.getAsDouble() - y[setup] : 0;
  }

  /** Where the laser of {@code setup} stands or is taken to stand, if any place is told. */
  OptionalDouble x(int setup) {
    return Double.isNaN(x[setup]) ? OptionalDouble.empty() : OptionalDouble.of(x[setup]);
  }

  OptionalDouble y(int setup) {
    return Double.isNaN(y[setup]) ? OptionalDouble.empty() : OptionalDouble.of(y[setup]);
  }
}
