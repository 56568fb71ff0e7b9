package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import dev.fillplane.room.RoomCheck;
import dev.fillplane.surface.SurveyDesign;
import dev.fillplane.surface.Variogram;
import java.util.List;

/**
 * Plans a survey before any reading: where, how many, and in which order to walk. The spread is
 * that of the survey alone, with everything poured; placing and yield come on top of it, and no
 * reading makes them smaller.
 */
public final class SurveyPlanner {

  /** Readings at most. */
  public static final int MOST = 500;

  /** Floor for which one reading is taken unless told; 2 to 4 m2 is common practice, no source. */
  public static final double AREA_OF_A_READING = 3;

  private static final Place ROOT = Place.root();

  private final SurveyPlanRequest request;
  private final Findings findings = new Findings();

  private SurveyPlanner(SurveyPlanRequest request) {
    this.request = request;
  }

  /**
   * Plans a survey.
   *
   * @throws dev.fillplane.finding.FindingsException if rooms, material or what is wanted make no
   *     sense
   */
  public static SurveyPlan plan(SurveyPlanRequest request) {
    return new SurveyPlanner(request).plan();
  }

  private SurveyPlan plan() {
    RoomCheck.check(request.rooms(), ROOT.at("rooms"), findings);
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT.at("material"), findings);
    Terms.check("survey/readingError", "readingError", request.readingError(), findings);
    request.surface().variogram().ifPresent(this::checkVariogram);
    checkWanted();
    findings.throwIfErrors();
    SurveyDesign design = design();
    Reserve reserve = new Reserve(0, 0, sheet, request.confidence());
    choose(design, reserve);
    SurveyWalk walk = SurveyWalk.over(request.rooms(), design.chosen(), findings);
    return new SurveyPlan(
        request.reference(),
        walk.stops(),
        walk.stops().size(),
        reserve.ofDeviation(design.deviation()),
        walk.length(),
        findings.warnings());
  }

  private void checkVariogram(Variogram told) {
    String at = "surface/variogram/";
    Terms.check(at + "nugget", at + "nugget", told.nugget(), findings);
    Terms.check(at + "sill", at + "sill", told.sill(), findings);
    Terms.check(at + "range", at + "range", told.range(), findings);
  }

  private void checkWanted() {
    request
        .wanted()
        .filter(wanted -> wanted.bags().isPresent() == wanted.readings().isPresent())
        .ifPresent(wanted -> findings.error("bags-or-readings", ROOT.at("wanted")));
  }

  private SurveyDesign design() {
    Variogram variogram = request.surface().variogram().orElse(SurveyDesign.USUAL);
    if (request.surface().variogram().isEmpty()) {
      findings.warning(
          "floor-assumed-usual",
          ROOT.at("surface"),
          "deviation",
          Amount.of(Math.sqrt(variogram.sill()), Dimension.HEIGHT),
          "range",
          Amount.of(variogram.range(), Dimension.PLAN));
    }
    double error =
        request
            .surface()
            .variogram()
            .map(Variogram::nugget)
            .orElse(request.readingError() * request.readingError());
    return SurveyDesign.over(request.rooms(), variogram, request.surface().drift(), error);
  }

  private void choose(SurveyDesign design, Reserve reserve) {
    int wanted = wantedReadings();
    boolean byBags = request.wanted().isPresent() && request.wanted().get().bags().isPresent();
    double bags = byBags ? request.wanted().get().bags().getAsDouble() : 0;
    boolean least = request.wanted().isEmpty();
    int inside = 0;
    while (design.chosen().size() < MOST) {
      Stopped.ifInterrupted();
      boolean edges = design.edgesChosen();
      boolean enough =
          byBags
              ? edges && reserve.ofDeviation(design.deviation()) <= bags
              : design.chosen().size() >= wanted
                  && (!least || (edges && inside >= request.rooms().size()));
      if (enough || !design.next()) {
        break;
      }
      inside += edges ? 1 : 0;
    }
    warn(design, byBags && reserve.ofDeviation(design.deviation()) > bags, reserve);
  }

  private int wantedReadings() {
    double area =
        request.rooms().stream()
            .map(Room::outline)
            .mapToDouble(outline -> outline.polygon().getArea())
            .sum();
    int usual = (int) Math.min(MOST, Math.ceil(area / AREA_OF_A_READING));
    return request.wanted().map(wanted -> wanted.readings().orElse(usual)).orElse(usual);
  }

  private void warn(SurveyDesign design, boolean missed, Reserve reserve) {
    int count = design.chosen().size();
    Place wanted = ROOT.at("wanted");
    if (missed) {
      int bags = (int) Math.ceil(Math.min(1e6, reserve.ofDeviation(design.deviation())));
      findings.warning("bags-not-reached", wanted.at("bags"), "readings", count, "bags", bags);
    } else if (!design.edgesChosen()) {
      findings.warning("edges-not-covered", wanted, "readings", count);
    }
    List<Integer> told =
        request.wanted().stream().flatMap(w -> w.readings().stream().boxed()).toList();
    if (!told.isEmpty() && count < told.get(0)) {
      findings.warning("no-place-left", wanted.at("readings"), "readings", count);
    }
  }
}
