package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.Enough;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.FlatnessWish;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.flatness.Tolerance;
import dev.fillplane.flatness.Tolerances;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a floor is held against.
 *
 * @param edge in use, where gaps are told without a limit
 * @param limit the main figure, if the floor is held against gaps
 * @param figures every gap with its edge, the main one first; none for F-numbers alone
 * @param enough how many of the figures the floor must keep
 * @param tolerance that it comes from, if one was named
 */
record WantedFlatness(
    double edge,
    Optional<FlatnessLimit> limit,
    List<GapLimit> figures,
    Enough enough,
    Optional<Tolerance> tolerance) {

  private static final double LONGEST = 30;

  /** Where a tolerance depends on the span, or has no gap, and no edge is told. */
  private static final double USUAL_EDGE = 2;

  /** Finds the limit; after an error the usual one. */
  static WantedFlatness of(FlatnessCheckRequest request, Place root, Findings findings) {
    OptionalDouble edge = request.straightedge();
    checkEdge(edge, root.at("straightedge"), findings);
    Place place = root.at("limit");
    if (request.limit().isEmpty() && request.covering().isEmpty()) {
      findings.warning("limit-assumed", root);
      return fixed(FlatnessLimit.usual(), edge);
    }
    if (request.limit().isEmpty()) {
      return known(request.covering().get().tolerance(), edge);
    }
    FlatnessWish wish = request.limit().get();
    if (request.covering().isPresent() || !isOneWay(wish)) {
      findings.error("limit-id-or-gap", place);
      return fixed(FlatnessLimit.usual(), OptionalDouble.empty());
    }
    return wish.id().isPresent()
        ? named(wish.id().get(), request, place.at("id"), findings)
        : told(wish, edge, place, findings);
  }

  private static boolean isOneWay(FlatnessWish wish) {
    boolean anyGap = wish.gap().isPresent() || wish.straightedge().isPresent();
    boolean wholeGap = wish.gap().isPresent() && wish.straightedge().isPresent();
    return wish.id().isPresent() ? !anyGap : wholeGap;
  }

  private static WantedFlatness told(
      FlatnessWish wish, OptionalDouble edge, Place place, Findings findings) {
    checkEdge(wish.straightedge(), place.at("straightedge"), findings);
    FlatnessLimit limit =
        new FlatnessLimit(
            wish.straightedge().orElseThrow(), wish.gap().orElseThrow(), "told in the request");
    return fixed(limit, edge);
  }

  private static WantedFlatness named(
      String id, FlatnessCheckRequest request, Place place, Findings findings) {
    Optional<Tolerance> known = Tolerances.find(id);
    if (known.isEmpty()) {
      findings.error("unknown-tolerance", place, "id", id);
      return fixed(FlatnessLimit.usual(), OptionalDouble.empty());
    }
    if (!known.get().hasGap() && request.survey().isPresent()) {
      findings.error("tolerance-without-gap", place, "id", id);
    }
    return known(known.get(), request.straightedge());
  }

  private static WantedFlatness known(Tolerance tolerance, OptionalDouble edge) {
    double span = Math.max(edge.orElse(USUAL_EDGE), Straightedge.LEAST_EDGE);
    List<GapLimit> figures = new ArrayList<>(tolerance.figuresAt(span));
    Optional<FlatnessLimit> limit = tolerance.at(span).map(main -> under(main, edge));
    limit.ifPresent(main -> figures.set(0, figures.get(0).under(main.straightedge())));
    return new WantedFlatness(
        limit.map(FlatnessLimit::straightedge).orElse(span),
        limit,
        List.copyOf(figures),
        tolerance.enough(),
        Optional.of(tolerance));
  }

  private static WantedFlatness fixed(FlatnessLimit limit, OptionalDouble edge) {
    FlatnessLimit main = under(limit, edge);
    List<GapLimit> figures = List.of(new GapLimit(main.straightedge(), main.gap(), 1));
    return new WantedFlatness(
        main.straightedge(), Optional.of(main), figures, Enough.ALL, Optional.empty());
  }

  private static FlatnessLimit under(FlatnessLimit limit, OptionalDouble edge) {
    return new FlatnessLimit(edge.orElse(limit.straightedge()), limit.gap(), limit.source());
  }

  /** The largest gap allowed between contacts {@code span} apart, by one of the figures. */
  double allowed(GapLimit figure, double span) {
    return tolerance.map(known -> known.allowed(span, figure.gap())).orElse(figure.gap());
  }

  private static void checkEdge(OptionalDouble edge, Place place, Findings findings) {
    double least = Straightedge.LEAST_EDGE;
    if (edge.isPresent() && !(edge.getAsDouble() >= least && edge.getAsDouble() <= LONGEST)) {
      findings.error(
          "out-of-range",
          place,
          "name",
          "length of the straightedge",
          "told",
          Amount.of(edge.getAsDouble(), Dimension.PLAN),
          "from",
          Amount.of(least, Dimension.PLAN),
          "to",
          Amount.of(LONGEST, Dimension.PLAN));
    }
  }
}
