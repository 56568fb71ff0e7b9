package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.Covering;
import dev.fillplane.flatness.Enough;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.heat.Conditions;
import dev.fillplane.heat.Site;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.safety.UnknownPremises;
import java.util.List;

/** What a plan assumes since nobody told it, and what it keeps simple. */
final class UnknownCautions {

  private UnknownCautions() {}

  static void warn(PlanRequest request, Site site, Place root, Findings findings) {
    List<String> assumed = request.conditions().map(Conditions::assumed).orElse(List.of());
    if (!assumed.isEmpty()) {
      String names = String.join(", ", assumed);
      findings.warning("temperatures-assumed", root.at("conditions"), "names", names);
    }
    if (request.conditions().isEmpty()) {
      findings.warning("conditions-assumed", root);
    }
    if (request.covering().isEmpty()) {
      findings.warning("covering-unknown", root);
    }
    if (site.humidity().isEmpty()) {
      findings.warning("humidity-unknown", root.at("conditions"));
    }
    UnknownPremises.warn(
        request.premises(), request.rooms(), site.ventilated(), root.at("premises"), findings);
    request.covering().ifPresent(covering -> warnOfShortEdges(covering, root, findings));
  }

  /** A plan holds the floor against the main figure of a covering only. */
  private static void warnOfShortEdges(Covering covering, Place root, Findings findings) {
    if (covering.tolerance().enough() == Enough.ALL) {
      for (GapLimit shorter : covering.tolerance().shorterEdges()) {
        findings.warning(
            "covering-short-edge",
            root.at("covering"),
            "straightedge",
            Amount.of(shorter.straightedge(), Dimension.PLAN),
            "gap",
            Amount.of(shorter.gap(), Dimension.HEIGHT));
      }
    }
  }
}
