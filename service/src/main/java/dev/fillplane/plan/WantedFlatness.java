package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.FlatnessWish;
import dev.fillplane.flatness.Tolerance;
import dev.fillplane.flatness.Tolerances;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The limit that a floor is held against.
 *
 * @param limit under the edge in use
 * @param tolerance that it comes from, if one was named
 */
record WantedFlatness(FlatnessLimit limit, Optional<Tolerance> tolerance) {

  private static final double SHORTEST = 0.5;
  private static final double LONGEST = 30;

  /** Where a tolerance depends on the span and no edge is told. */
  private static final double USUAL_EDGE = 2;

  /** Finds the limit; after an error the usual one. */
  static WantedFlatness of(FlatnessCheckRequest request, Place root, Findings findings) {
    checkEdge(request.straightedge(), root.at("straightedge"), findings);
    if (request.limit().isEmpty()) {
      findings.warning("limit-assumed", root);
      return fixed(FlatnessLimit.usual(), request.straightedge());
    }
    FlatnessWish wish = request.limit().get();
    Place place = root.at("limit");
    boolean byGap = wish.gap().isPresent() && wish.straightedge().isPresent();
    boolean anyGap = wish.gap().isPresent() || wish.straightedge().isPresent();
    if (wish.id().isPresent() ? anyGap : !byGap) {
      findings.error("limit-id-or-gap", place);
      return fixed(FlatnessLimit.usual(), OptionalDouble.empty());
    }
    if (byGap) {
      checkEdge(wish.straightedge(), place.at("straightedge"), findings);
      double edge = wish.straightedge().getAsDouble();
      return fixed(
          new FlatnessLimit(edge, wish.gap().getAsDouble(), "told in the request"),
          request.straightedge());
    }
    return named(wish.id().orElseThrow(), request.straightedge(), place.at("id"), findings);
  }

  /** The largest gap allowed between contacts {@code span} apart. */
  double allowed(double span) {
    return tolerance.map(known -> known.allowed(span, limit.gap())).orElse(limit.gap());
  }

  private static WantedFlatness named(
      String id, OptionalDouble edge, Place place, Findings findings) {
    Optional<Tolerance> known = Tolerances.find(id);
    if (known.isEmpty()) {
      findings.error("unknown-tolerance", place, "id", id);
    } else if (!known.get().hasGap()) {
      findings.error("tolerance-without-gap", place, "id", id);
    }
    double span = Math.max(edge.orElse(USUAL_EDGE), SHORTEST);
    FlatnessLimit limit =
        known.flatMap(tolerance -> tolerance.at(span)).orElseGet(FlatnessLimit::usual);
    return new WantedFlatness(under(limit, edge), known);
  }

  private static WantedFlatness fixed(FlatnessLimit limit, OptionalDouble edge) {
    return new WantedFlatness(under(limit, edge), Optional.empty());
  }

  private static FlatnessLimit under(FlatnessLimit limit, OptionalDouble edge) {
    return new FlatnessLimit(edge.orElse(limit.straightedge()), limit.gap(), limit.source());
  }

  private static void checkEdge(OptionalDouble edge, Place place, Findings findings) {
    if (edge.isPresent() && !(edge.getAsDouble() >= SHORTEST && edge.getAsDouble() <= LONGEST)) {
      findings.error(
          "out-of-range",
          place,
          "name",
          "length of the straightedge",
          "told",
          Amount.of(edge.getAsDouble(), Dimension.PLAN),
          "from",
          Amount.of(SHORTEST, Dimension.PLAN),
          "to",
          Amount.of(LONGEST, Dimension.PLAN));
    }
  }
}
