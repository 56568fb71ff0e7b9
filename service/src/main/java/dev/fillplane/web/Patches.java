package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * Variations of a plan request, each told as a merge patch. Every patched request is held against
 * the contract like one that came alone; faults are told at their patch.
 */
record Patches(SchemaGate gate) {

  private static final String PLAN = "PlanRequest";

  /**
   * The patched requests.
   *
   * @throws Refusal if any of them does not fit the contract or is in other units than the base
   */
  List<JsonNode> requests(JsonNode base, JsonNode variations) {
    List<JsonNode> patched = new ArrayList<>();
    List<Problem.Fault> faults = new ArrayList<>();
    for (int i = 0; i < variations.size(); i++) {
      JsonNode request = MergePatch.merged(base, variations.get(i).get("patch"));
      Place place = Place.root().at("variations").at(i).at("patch");
      gate.faults(PLAN, request).stream().map(fault -> fault.under(place)).forEach(faults::add);
      if (!request.path("units").equals(base.path("units"))) {
        faults.add(Problem.Fault.of(unitsOfTheBase(place.at("units")), UnitSystem.METRIC));
      }
      patched.add(request);
    }
    Refusal.ifAny(faults);
    return patched;
  }

  private static Finding unitsOfTheBase(Place place) {
    Findings findings = new Findings();
    findings.error("units-of-the-base", place);
    return findings.errors().get(0);
  }
}
