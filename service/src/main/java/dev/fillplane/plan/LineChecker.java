package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.EdgeCheck;
import dev.fillplane.flatness.FNumberCheck;
import dev.fillplane.flatness.FNumberPair;
import dev.fillplane.flatness.FlatnessCheck;
import dev.fillplane.flatness.Gap;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.LineFlatness;
import dev.fillplane.flatness.LineGaps;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.flatness.Passes;
import dev.fillplane.flatness.Placements;
import dev.fillplane.flatness.ProfileGap;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.flatness.Tolerance;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Checks measured lines: straightedge and F-numbers. */
final class LineChecker {

  private static final Place ROOT = Place.root();

  /** Smaller gaps are rounding of a straight line. */
  private static final double ROUNDING = 1e-9;

  private final FlatnessCheckRequest request;
  private final WantedFlatness wanted;
  private final Findings findings;

  LineChecker(FlatnessCheckRequest request, WantedFlatness wanted, Findings findings) {
    this.request = request;
    this.wanted = wanted;
    this.findings = findings;
  }

  FlatnessReport report() {
    LineNumbers numbers = LineNumbers.of(request, findings);
    List<LineFlatness> lines = new ArrayList<>();
    for (int i = 0; i < request.lines().size(); i++) {
      lines.add(line(request.lines().get(i), numbers.line(i)));
    }
    List<EdgeCheck> checks = wanted.figures().stream().map(this::check).toList();
    Optional<FNumberCheck> asked =
        wanted.tolerance().flatMap(Tolerance::fNumbers).map(numbers::against);
    Passes verdict =
        checks.isEmpty()
            ? asked.orElseThrow().verdict()
            : Passes.together(checks.stream().map(EdgeCheck::verdict).toList(), wanted.enough());
    return new FlatnessReport(
        verdict,
        wanted.limit(),
        checks,
        asked,
        lines.stream().mapToDouble(LineFlatness::gap).max().orElse(0),
        lines,
        numbers.combined(),
        OverGaps.listed(wanted, checks, this::over),
        List.of(),
        List.of(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        findings.warnings());
  }

  private EdgeCheck check(GapLimit figure) {
    Placements places = new Placements();
    boolean unseen = false;
    for (int i = 0; i < request.lines().size(); i++) {
      MeasuredLine line = request.lines().get(i);
      double margin = FlatnessCheck.margin(line.readingError());
      LineGaps.count(
          line, figure.straightedge(), span -> wanted.allowed(figure, span), margin, places);
      unseen |= isUnseen(figure, line, ROOT.at("lines").at(i).at("spacing"));
    }
    EdgeCheck check = EdgeCheck.of(figure, places);
    return unseen ? check.unseen() : check;
  }

  private boolean isUnseen(GapLimit figure, MeasuredLine line, Place place) {
    if (LineGaps.canSee(line, figure.straightedge())) {
      return false;
    }
    findings.warning(
        "line-too-coarse",
        place,
        "line",
        line.id(),
        "straightedge",
        Amount.of(figure.straightedge(), Dimension.PLAN));
    return true;
  }

  private List<ListedGap> over(GapLimit figure) {
    List<ListedGap> gaps = new ArrayList<>();
    double edge = figure.straightedge();
    for (MeasuredLine line : request.lines()) {
      for (Gap gap : LineGaps.over(line, edge, span -> wanted.allowed(figure, span))) {
        double limit = wanted.allowed(figure, gap.from().distance(gap.to()));
        gaps.add(ListedGap.of(line.id(), gap, edge, limit));
      }
    }
    return gaps;
  }

  private LineFlatness line(MeasuredLine line, FNumberPair numbers) {
    ProfileGap largest = Straightedge.gap(line.elevations(), line.spacing(), wanted.edge());
    boolean hollow = largest.gap() > ROUNDING;
    return new LineFlatness(
        line.id(),
        numbers.ff(),
        numbers.fl(),
        hollow ? largest.gap() : 0,
        hollow ? OptionalDouble.of(largest.at() * line.spacing()) : OptionalDouble.empty());
  }
}
