package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.RoomCheck;
import java.util.Optional;

/**
 * Checks how flat a floor is, from measured lines or from a survey of its rooms, before a pour or
 * after it. Heights of lines are as sure as their reading error, the surface of a survey as its
 * mean deviation, as in a plan. Every figure of a tolerance is checked. Where a tolerance depends
 * on the span, a survey is held to that of the whole edge, a line to that between the contacts.
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
    LineCheck.check(request.lines(), ROOT, findings);
    Optional<DataSheet> sheet =
        request.material().map(wish -> Catalogue.resolve(wish, ROOT.at("material"), findings));
    if (request.bagsLeft().isPresent() && (lines || sheet.isEmpty())) {
      findings.warning("bags-left-not-used", ROOT.at("bagsLeft"));
    }
    findings.throwIfErrors();
    return lines ? lines(wanted) : new SurveyChecker(request, wanted, sheet, findings).report();
  }

  private FlatnessReport lines(WantedFlatness wanted) {
    RoomCheck.check(request.rooms(), ROOT.at("rooms"), findings);
    findings.throwIfErrors();
    return new LineChecker(request, wanted, findings).report();
  }
}
