package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.EdgeCheck;
import dev.fillplane.flatness.EdgeWalk;
import dev.fillplane.flatness.Enough;
import dev.fillplane.flatness.FlatnessCheck;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Hollow;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.Passes;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.RoomCheck;
import dev.fillplane.supply.BagOdds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/** Checks the floor of a survey, before a pour or after it. */
final class SurveyChecker {

  private static final Place ROOT = Place.root();

  private final FlatnessCheckRequest request;
  private final WantedFlatness wanted;
  private final Optional<DataSheet> sheet;
  private final Findings findings;
  private final FittedFloor floor;
  private final List<Polygon> rooms;
  private final DoubleBinaryOperator elevation;
  private final Map<GapLimit, EdgeWalk> walks = new LinkedHashMap<>();

  /**
   * Fits the floor.
   *
   * @throws dev.fillplane.finding.FindingsException if the survey cannot be answered
   */
  SurveyChecker(
      FlatnessCheckRequest request,
      WantedFlatness wanted,
      Optional<DataSheet> sheet,
      Findings findings) {
    this.request = request;
    this.wanted = wanted;
    this.sheet = sheet;
    this.findings = findings;
    PlanRequest plan = request.asPlan();
    Terms.check(plan, findings);
    RoomCheck.check(plan.rooms(), ROOT.at("rooms"), findings);
    floor = FittedFloor.of(plan, findings);
    rooms = floor.polygons();
    elevation = floor.sample()::elevation;
  }

  FlatnessReport report() {
    double margin = FlatnessCheck.margin(floor.meanDeviation());
    for (GapLimit figure : wanted.figures()) {
      walks.put(figure, Straightedge.walk(rooms, elevation, figure, margin));
    }
    List<EdgeCheck> checks = wanted.figures().stream().map(this::check).toList();
    Passes verdict =
        Passes.together(checks.stream().map(EdgeCheck::verdict).toList(), wanted.enough());
    GrindAndPatch work = GrindAndPatch.of(rooms, elevation, workedFor());
    NextPass next = new NextPassRule(area(), work, request.poured(), sheet).choose(verdict);
    if (next.minutes() > 0) {
      findings.warning("grinding-makes-dust", ROOT);
    }
    return new FlatnessReport(
        verdict,
        wanted.limit(),
        checks,
        Optional.empty(),
        checks.get(0).gap(),
        List.of(),
        Optional.empty(),
        OverGaps.listed(wanted, checks, this::over),
        work.humps(),
        counted(work.hollows()),
        bags(work.patchVolume()),
        suffice(next),
        Optional.of(next),
        findings.warnings());
  }

  private EdgeCheck check(GapLimit figure) {
    EdgeCheck check = EdgeCheck.of(figure, walks.get(figure).places());
    boolean unseen = !isSeen(figure);
    if (unseen) {
      findings.warning(
          "edge-too-short-to-see",
          ROOT.at("survey"),
          "straightedge",
          Amount.of(figure.straightedge(), Dimension.PLAN),
          "spacing",
          Amount.of(figure.straightedge() / 2, Dimension.PLAN));
    }
    return unseen || floor.readings().thin() ? check.unseen() : check;
  }

  private boolean isSeen(GapLimit figure) {
    return ShortEdges.areSeen(figure.straightedge(), floor.readings().spots(), request.rooms());
  }

  /** What the correction keeps to: what the readings can see of the figures that count. */
  private List<GapLimit> workedFor() {
    List<GapLimit> figures = new ArrayList<>(wanted.figures().subList(0, 1));
    if (wanted.enough() == Enough.ALL) {
      wanted.figures().stream().skip(1).filter(this::isSeen).forEach(figures::add);
    }
    return figures;
  }

  private List<ListedGap> over(GapLimit figure) {
    return walks.get(figure).over().stream()
        .map(gap -> ListedGap.of(gap, figure.straightedge(), figure.gap()))
        .toList();
  }

  private List<Hollow> counted(List<Hollow> hollows) {
    return sheet
        .map(
            known ->
                hollows.stream()
                    .map(hollow -> hollow.with(BagOdds.likely(hollow.volume(), 0, known)))
                    .toList())
        .orElse(hollows);
  }

  private OptionalInt bags(double volume) {
    return sheet
        .map(known -> OptionalInt.of(BagOdds.likely(volume, 0, known)))
        .orElse(OptionalInt.empty());
  }

  /** Whether the bags left over are enough for the next pass, where that is known. */
  private Optional<Boolean> suffice(NextPass next) {
    boolean known =
        request.bagsLeft().isPresent()
            && next.bags().isPresent()
            && next.action() != NextAction.READ_MORE;
    return known
        ? Optional.of(request.bagsLeft().getAsInt() >= next.bags().getAsInt())
        : Optional.empty();
  }

  private double area() {
    return rooms.stream().mapToDouble(Polygon::getArea).sum();
  }
}
