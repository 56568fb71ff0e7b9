package dev.fillplane.plan;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FlatnessSummary;
import dev.fillplane.flatness.Passes;
import dev.fillplane.pour.Batch;
import dev.fillplane.pour.Pour;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.Quantities;

/** What a planned pour does not say of itself, and whether it is needed at all. */
final class PourCautions {

  /** Deeper pours dry longer than the times of a sheet (common practice, no source). */
  private static final double DRIES_AS_TOLD = 0.010;

  private PourCautions() {}

  /** Warns of a pour; nothing where nothing is poured. */
  static void warn(
      DepthSummary depth,
      Quantities quantities,
      Pour pour,
      FlatnessSummary flatness,
      Place root,
      Findings findings) {
    if (pour.batches().isEmpty()) {
      return;
    }
    findings.warning(
        "pour-at-usual-times",
        root.at("crew"),
        "poured",
        pour.batches().stream().mapToInt(Batch::bags).sum(),
        "likely",
        quantities.bags().likely());
    Amount deepest = Amount.of(depth.maximum(), Dimension.HEIGHT);
    if (quantities.lifts().size() > 1) {
      findings.warning("lifts-wait-between", root.at("material"), "depth", deepest);
    }
    if (depth.maximum() > DRIES_AS_TOLD) {
      findings.warning("deep-pour-dries-longer", root.at("material"), "depth", deepest);
    }
    if (flatness.before().verdict() == Passes.WITHIN) {
      warnOfPassing(quantities, flatness, root, findings);
    }
  }

  private static void warnOfPassing(
      Quantities quantities, FlatnessSummary flatness, Place root, Findings findings) {
    findings.warning(
        "floor-passes-already",
        root,
        "gap",
        Amount.of(flatness.before().gap(), Dimension.HEIGHT),
        "straightedge",
        Amount.of(flatness.limit().straightedge(), Dimension.PLAN),
        "limit",
        Amount.of(flatness.limit().gap(), Dimension.HEIGHT),
        "bags",
        quantities.bags().likely());
  }
}
