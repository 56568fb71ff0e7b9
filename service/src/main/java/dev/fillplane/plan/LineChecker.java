package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FNumber;
import dev.fillplane.flatness.FNumberClass;
import dev.fillplane.flatness.FNumberPair;
import dev.fillplane.flatness.FNumberRules;
import dev.fillplane.flatness.FNumbers;
import dev.fillplane.flatness.Gap;
import dev.fillplane.flatness.LineFlatness;
import dev.fillplane.flatness.LineGaps;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.flatness.Passes;
import dev.fillplane.flatness.ProfileGap;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.flatness.Tolerance;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Checks measured lines: straightedge and F-numbers. */
final class LineChecker {

  private static final int MOST_GAPS = 100;
  private static final double FURTHEST = 10_000;

  /** Smaller gaps are rounding of a straight line. */
  private static final double ROUNDING = 1e-9;

  private static final String INAPPLICABLE = "f-numbers-do-not-apply";

  private final FlatnessCheckRequest request;
  private final WantedFlatness wanted;
  private final Place root;
  private final Findings findings;
  private final List<FNumber> flatness = new ArrayList<>();
  private final List<FNumber> levelness = new ArrayList<>();
  private final List<ListedGap> gaps = new ArrayList<>();
  private boolean unseen;

  LineChecker(FlatnessCheckRequest request, WantedFlatness wanted, Place root, Findings findings) {
    this.request = request;
    this.wanted = wanted;
    this.root = root;
    this.findings = findings;
  }

  /** Elevations that are no measurements. */
  static void check(List<MeasuredLine> lines, Place root, Findings findings) {
    for (int line = 0; line < lines.size(); line++) {
      double[] elevations = lines.get(line).elevations();
      for (int i = 0; i < elevations.length; i++) {
        if (!(Math.abs(elevations[i]) <= FURTHEST)) {
          findings.error(
              "elevation-too-far",
              root.at("lines").at(line).at("elevations").at(i),
              "furthest",
              Amount.of(FURTHEST, Dimension.PLAN));
        }
      }
    }
  }

  FlatnessReport report() {
    warnOfTheSection();
    List<LineFlatness> lines = new ArrayList<>();
    for (int i = 0; i < request.lines().size(); i++) {
      lines.add(line(request.lines().get(i), root.at("lines").at(i)));
    }
    gaps.sort(Comparator.comparingDouble((ListedGap gap) -> gap.gap() / gap.limit()).reversed());
    OptionalDouble ff = FNumbers.combined(flatness);
    OptionalDouble fl = FNumbers.combined(levelness);
    wanted.tolerance().flatMap(Tolerance::fNumbers).ifPresent(c -> warnOfClass(c, ff, fl));
    boolean any = ff.isPresent() || fl.isPresent();
    return new FlatnessReport(
        verdict(),
        wanted.limit(),
        lines.stream().mapToDouble(LineFlatness::gap).max().orElse(0),
        lines,
        any ? Optional.of(new FNumberPair(ff, fl)) : Optional.empty(),
        gaps.subList(0, Math.min(MOST_GAPS, gaps.size())),
        List.of(),
        List.of(),
        OptionalInt.empty(),
        findings.warnings());
  }

  private Passes verdict() {
    if (!gaps.isEmpty()) {
      return Passes.OVER;
    }
    return unseen ? Passes.UNCLEAR : Passes.WITHIN;
  }

  private LineFlatness line(MeasuredLine line, Place place) {
    double edge = wanted.limit().straightedge();
    if (!LineGaps.canSee(line, edge)) {
      unseen = true;
      findings.warning("line-too-coarse", place.at("spacing"), "line", line.id());
    }
    for (Gap gap : LineGaps.over(line, edge, wanted::allowed)) {
      gaps.add(ListedGap.of(line.id(), gap, wanted.allowed(gap.from().distance(gap.to()))));
    }
    ProfileGap largest = Straightedge.gap(line.elevations(), line.spacing(), edge);
    boolean hollow = largest.gap() > ROUNDING;
    boolean applies = applies(line, place);
    return new LineFlatness(
        line.id(),
        applies ? told(FNumbers.flatness(line.elevations()), flatness, place) : none(),
        applies && !request.suspended()
            ? told(FNumbers.levelness(line.elevations()), levelness, place)
            : none(),
        hollow ? largest.gap() : 0,
        hollow ? OptionalDouble.of(largest.at() * line.spacing()) : none());
  }

  private boolean applies(MeasuredLine line, Place place) {
    Optional<String> against = FNumberRules.against(line.spacing(), line.elevations().length);
    against.ifPresent(
        why ->
            findings.warning(
                INAPPLICABLE, place, "which", "FF and FL", "why", "line " + line.id() + " " + why));
    return against.isEmpty() && !FNumberRules.isTooSmall(request.area());
  }

  private OptionalDouble told(Optional<FNumber> number, List<FNumber> all, Place place) {
    number.ifPresent(all::add);
    if (number.isPresent() && number.get().value() >= FNumbers.MOST) {
      findings.warning("f-number-capped", place, "most", (int) FNumbers.MOST);
    }
    return number.map(FNumber::value).map(OptionalDouble::of).orElse(none());
  }

  private void warnOfTheSection() {
    if (FNumberRules.isTooSmall(request.area())) {
      findings.warning(
          INAPPLICABLE,
          root.at("area"),
          "which",
          "FF and FL",
          "why",
          "the section is smaller than 320 ft2 (30 m2)");
    }
    if (request.suspended()) {
      findings.warning(
          INAPPLICABLE,
          root.at("suspended"),
          "which",
          "FL",
          "why",
          "a suspended deck sags after its forms are struck");
    }
  }

  private void warnOfClass(FNumberClass wish, OptionalDouble ff, OptionalDouble fl) {
    warnOfClass("FF", wish.ff(), wish.localFf(), ff, flatness);
    warnOfClass("FL", wish.fl(), wish.localFl(), fl, levelness);
  }

  private void warnOfClass(
      String name, double overall, double local, OptionalDouble told, List<FNumber> lines) {
    double least = lines.stream().mapToDouble(FNumber::value).min().orElse(FNumbers.MOST);
    if (told.orElse(FNumbers.MOST) < overall || least < local) {
      findings.warning(
          "below-f-numbers",
          root.at("limit"),
          "name",
          name,
          "told",
          text(told.orElse(FNumbers.MOST)),
          "overall",
          text(overall),
          "least",
          text(least),
          "local",
          text(local));
    }
  }

  private static String text(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }
}
