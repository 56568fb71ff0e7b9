package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FlatnessCheck;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.FloorGap;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.RoomCheck;
import dev.fillplane.supply.BagOdds;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Polygon;

/**
 * Checks how flat a floor is, from measured lines or from a survey of its rooms. Heights of lines
 * count as measured exactly; the surface of a survey is as sure as its mean deviation, as in a
 * plan. A survey is held against one limit under the whole edge, a line against that of each span.
 */
public final class FlatnessChecker {

  private static final Place ROOT = Place.root();

  private final Findings findings = new Findings();
  private final FlatnessCheckRequest request;

  private FlatnessChecker(FlatnessCheckRequest request) {
    this.request = request;
  }

  /**
   * Checks a floor.
   *
   * @throws dev.fillplane.finding.FindingsException if not exactly one of lines and survey is told,
   *     the limit is none, or the survey cannot be answered
   */
  public static FlatnessReport check(FlatnessCheckRequest request) {
    return new FlatnessChecker(request).report();
  }

  private FlatnessReport report() {
    boolean lines = !request.lines().isEmpty();
    if (lines == request.survey().isPresent()) {
      findings.error("lines-or-survey", ROOT);
    }
    if (request.survey().isPresent() && request.rooms().isEmpty()) {
      findings.error("survey-without-rooms", ROOT);
    }
    WantedFlatness wanted = WantedFlatness.of(request, ROOT, findings);
    LineChecker.check(request.lines(), ROOT, findings);
    Optional<DataSheet> sheet =
        request.material().map(wish -> Catalogue.resolve(wish, ROOT.at("material"), findings));
    findings.throwIfErrors();
    return lines
        ? new LineChecker(request, wanted, ROOT, findings).report()
        : survey(wanted.limit(), sheet);
  }

  private FlatnessReport survey(FlatnessLimit limit, Optional<DataSheet> sheet) {
    PlanRequest plan = request.asPlan();
    Terms.check(plan, findings);
    RoomCheck.check(plan.rooms(), ROOT.at("rooms"), findings);
    FittedFloor floor = FittedFloor.of(plan, findings);
    FloorGap before = before(floor, limit);
    GrindAndPatch work = GrindAndPatch.of(floor.polygons(), floor.sample()::elevation, limit);
    return new FlatnessReport(
        before.verdict(),
        limit,
        before.gap(),
        List.of(),
        Optional.empty(),
        gaps(floor, limit),
        work.humps(),
        work.hollows(),
        sheet
            .map(known -> OptionalInt.of(BagOdds.likely(work.patchVolume(), 0, known)))
            .orElse(OptionalInt.empty()),
        findings.warnings());
  }

  private static FloorGap before(FittedFloor floor, FlatnessLimit limit) {
    FloorGap before =
        FlatnessCheck.of(
                floor.polygons(), floor.sample()::elevation, floor.meanDeviation(), limit, false)
            .before();
    return floor.readings().thin() ? before.unseen() : before;
  }

  private static List<ListedGap> gaps(FittedFloor floor, FlatnessLimit limit) {
    List<Polygon> rooms = floor.polygons();
    return Straightedge.gapsOver(
            rooms, floor.sample()::elevation, limit.straightedge(), limit.gap())
        .stream()
        .map(gap -> ListedGap.of(gap, limit.gap()))
        .toList();
  }
}
