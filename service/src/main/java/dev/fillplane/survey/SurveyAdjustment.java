package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Adjusts a survey to elevations by weighted least squares over all setups at once.
 *
 * <p>Each reading is {@code planeElevation(setup) - elevation(point)} with the weight 1 /
 * readingError2. Benchmarks are held; without any the plane of the first setup is 0. Deviations
 * come from the reading errors alone (a priori), so a further reading never raises one; with
 * benchmarks held they are relative to these, else to the first plane. Elevations that were
 * measured already stand as they are, with the deviation of one reading.
 *
 * <p>Each reading may be off by a tilt of the laser: the plane rises along x and along y by two
 * unknowns that are 0 beforehand with the deviation {@link Survey#laserTilt()}, about the place of
 * the setup or the centroid of its readings. Other setups or benchmarks over the same points show
 * it as far as they can; what they cannot show stays in the deviations, which grow with the
 * distance from the laser. It acts only where places of readings are told, see {@link Lasers}.
 *
 * <p>The <em>loops</em> are those that the readings outside a spanning tree close; the tree is
 * grown breadth first from the benchmarks or the first setup, setups in the order of the request.
 * They are of the readings as they are, without tilts. The worst of them (in absolute value) is the
 * <em>misclosure</em>. See {@link LoopLimits} for what is allowed and {@link Loops} for what is
 * held against it, {@link Ties} for how setups agree after the adjustment.
 *
 * <p>A <em>suspect</em> is a point with a reading whose residual is more than 3 of its own standard
 * deviations (Baarda's test without iteration; from memory). One wrong reading can make its
 * neighbours suspect as well; the worst comes first. Where a point has two readings only, both are
 * equally off and nothing says which is wrong.
 *
 * <p>The values depend neither on the order of the readings within a setup nor on the names of the
 * points, to the last bit; the order of the setups changes elevations by rounding only (below 1e-12
 * m for heights of metres), as long as the datum does not depend on it, but may choose other loops.
 * Time grows with the readings and the cube of the setups; above {@link Lasers#MOST_SETUPS} planes
 * are taken as level.
 */
public final class SurveyAdjustment {

  private final Survey survey;
  private final Place place;
  private final Findings findings;
  private final SurveyCheck check;

  private SurveyAdjustment(Survey survey, Place place, Findings findings) {
    this.survey = survey;
    this.place = place;
    this.findings = findings;
    check = new SurveyCheck(survey, place, findings);
  }

  /**
   * The elevations of all points that were read and are not ignored, in the order of their first
   * reading. What is wrong or odd goes to {@code findings}. Call it after all other checks of the
   * request, so that the caller hears of every error at once.
   *
   * @param place where the survey stands in the request
   * @throws dev.fillplane.finding.FindingsException if {@code findings} has errors, from here or
   *     from before
   */
  public static Elevations adjust(Survey survey, Place place, Findings findings) {
    Optional<Elevations> elevations = new SurveyAdjustment(survey, place, findings).adjust();
    findings.throwIfErrors();
    return elevations.orElseThrow();
  }

  /** Empty only if there is an error. */
  private Optional<Elevations> adjust() {
    if (!check.readable()) {
      return Optional.empty();
    }
    if (!survey.elevations().isEmpty()) {
      return Optional.of(new KnownElevations(survey, place, findings).ofList());
    }
    if (survey.table().isEmpty()) {
      return adjust(SetupReader.read(survey, place, findings));
    }
    Table table = survey.table().get();
    return table.columns().contains(Column.ELEVATION)
        ? Optional.of(new KnownElevations(survey, place, findings).ofTable(table))
        : adjust(TableReader.read(table, survey.readingError(), place.at("table")));
  }

  private Optional<Elevations> adjust(Observations told) {
    double[] held = check.held(told.names());
    Observations all = told.without(check.ignored(told.names()));
    if (all.count() == 0) {
      findings.error("no-readings", place);
      return Optional.empty();
    }
    PointPositions positions = new PointPositions(all, findings);
    RepeatedReadings.check(all, findings);
    NearPoints.check(all, findings);
    Lasers lasers = Lasers.of(survey, all, place, findings);
    Network network = new Network(all, held, positions);
    SpanningTree tree = new SpanningTree(network);
    if (!connected(network, tree, all) || findings.hasErrors()) {
      return Optional.empty();
    }
    Loops loops = new Loops(network, tree, new LoopLimits(survey));
    warnOfLoops(loops, all.setups());
    TiltCheck tilts = new TiltCheck(network, lasers, place, findings);
    PlaneEquations planes = tilts.solve(tree, positions);
    Ties ties = new Ties(network, planes);
    ties.warn(all.setups(), place.at("setups"), findings);
    AdjustedPoints points = points(all, positions, network, planes);
    List<Loop> worst = loops.worst(all.setups());
    return Optional.of(
        new Elevations(
            points.all(),
            setups(all, network, planes, lasers),
            worst.stream().findFirst().map(one -> new Misclosure(one.value(), one.limit())),
            worst,
            ties.worst(all.setups()),
            points.suspects()));
  }

  private boolean connected(Network network, SpanningTree tree, Observations all) {
    boolean connected = true;
    for (int s = 0; s < network.setups(); s++) {
      Stopped.ifInterrupted();
      Place there = place.at("setups").at(s);
      if (!network.used(s)) {
        findings.warning("setup-without-readings", there, "setup", all.setups()[s]);
      } else if (!tree.reaches(s)) {
        findings.error("setups-not-connected", there, "setup", all.setups()[s]);
        connected = false;
      }
    }
    return connected;
  }

  private void warnOfLoops(Loops loops, String[] names) {
    loops
        .overLimit(names)
        .ifPresent(
            loop ->
                findings.warning(
                    "misclosure-over-limit",
                    place,
                    "value",
                    Amount.of(loop.value(), Dimension.HEIGHT),
                    "limit",
                    Amount.of(loop.limit(), Dimension.HEIGHT)));
  }

  private static AdjustedPoints points(
      Observations all, PointPositions positions, Network network, PlaneEquations planes) {
    AdjustedPoints points = new AdjustedPoints(network, planes);
    for (int p = 0; p < network.points(); p++) {
      if (network.count(p) > 0) {
        points.add(p, all.names().name(p), positions);
      }
    }
    return points;
  }

  private static List<AdjustedSetup> setups(
      Observations all, Network network, PlaneEquations planes, Lasers lasers) {
    List<AdjustedSetup> setups = new ArrayList<>();
    for (int s = 0; s < network.setups(); s++) {
      Stopped.ifInterrupted();
      if (network.used(s)) {
        boolean tilts = planes.tilts(s);
        setups.add(
            new AdjustedSetup(
                all.setups()[s],
                planes.plane(s),
                lasers.x(s),
                lasers.y(s),
                tilts ? OptionalDouble.of(planes.tiltX(s)) : OptionalDouble.empty(),
                tilts ? OptionalDouble.of(planes.tiltY(s)) : OptionalDouble.empty(),
                tilts ? OptionalDouble.of(planes.tiltDeviation(s)) : OptionalDouble.empty()));
      }
    }
    return setups;
  }
}
