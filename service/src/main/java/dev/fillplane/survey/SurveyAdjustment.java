package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
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
 * <p>The <em>misclosure</em> is the largest closing error (in absolute value) of the loops that the
 * readings outside a spanning tree close; the tree is grown breadth first from the benchmarks or
 * the first setup, setups in the order of the request. Positive: walked with its earlier setups
 * first, the loop comes back too high. Its limit is the caller's, else 12 mm sqrt(loop length in
 * km) (third order; Federal Geodetic Control Committee 1984, from memory), else 5 mm sqrt(setups in
 * the loop) (common building practice).
 *
 * <p>A <em>suspect</em> is a point with a reading whose residual is more than 3 of its own standard
 * deviations (Baarda's test without iteration; from memory). One wrong reading can make its
 * neighbours suspect as well; the worst comes first. Where a point has two readings only, both are
 * equally off and nothing says which is wrong.
 *
 * <p>The values depend neither on the order of the readings within a setup nor on the names of the
 * points, to the last bit; the order of the setups changes elevations by rounding only (below 1e-12
 * m for heights of metres), as long as the datum does not depend on it, but may choose other loops.
 * Time grows with the readings and the cube of the setups.
 */
public final class SurveyAdjustment {

  private static final double THIRD_ORDER = 0.012;
  private static final double PER_SETUP = 0.005;
  private static final double KILOMETRE = 1000;

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
    Network network = new Network(all, held);
    SpanningTree tree = new SpanningTree(network);
    if (!connected(network, tree, all) || findings.hasErrors()) {
      return Optional.empty();
    }
    PlaneEquations planes = new PlaneEquations(network, tree);
    return Optional.of(elevations(all, positions, network, planes, misclosure(network, tree)));
  }

  private boolean connected(Network network, SpanningTree tree, Observations all) {
    boolean connected = true;
    for (int s = 0; s < network.setups(); s++) {
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

  private Optional<Misclosure> misclosure(Network network, SpanningTree tree) {
    Optional<Misclosure> worst =
        WorstLoop.find(network, tree)
            .map(loop -> new Misclosure(loop.error(), limit(loop.setups())));
    worst
        .filter(loop -> Math.abs(loop.value()) > loop.limit())
        .ifPresent(
            loop ->
                findings.warning(
                    "misclosure-over-limit",
                    place,
                    "value",
                    Amount.of(loop.value(), Dimension.HEIGHT),
                    "limit",
                    Amount.of(loop.limit(), Dimension.HEIGHT)));
    return worst;
  }

  private double limit(int setups) {
    OptionalDouble own = survey.misclosureLimit();
    OptionalDouble length = survey.loopLength();
    if (own.isPresent()) {
      return own.getAsDouble();
    }
    return length.isPresent()
        ? THIRD_ORDER * Math.sqrt(Math.max(0, length.getAsDouble()) / KILOMETRE)
        : PER_SETUP * Math.sqrt(setups);
  }

  private static Elevations elevations(
      Observations all,
      PointPositions positions,
      Network network,
      PlaneEquations planes,
      Optional<Misclosure> misclosure) {
    AdjustedPoints points = new AdjustedPoints(network, planes);
    for (int p = 0; p < network.points(); p++) {
      if (network.count(p) > 0) {
        points.add(p, all.names().name(p), positions);
      }
    }
    List<AdjustedSetup> setups = new ArrayList<>();
    for (int s = 0; s < network.setups(); s++) {
      if (network.used(s)) {
        setups.add(new AdjustedSetup(all.setups()[s], planes.plane(s)));
      }
    }
    return new Elevations(points.all(), setups, misclosure, points.suspects());
  }
}
