package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A request that is compared with another.
 *
 * @param name the caller's
 */
public record Variation(String name, PlanRequest request) {

  /** Name of the request that is varied. */
  static final String BASE = "base";

  /** Finds names that are told twice or taken by the base. */
  public static void checkNames(List<Variation> variations, Place place, Findings findings) {
    Set<String> names = new HashSet<>(List.of(BASE));
    for (int i = 0; i < variations.size(); i++) {
      String name = variations.get(i).name();
      if (!names.add(name)) {
        findings.error("variation-name-taken", place.at(i).at("name"), "variation", name);
      }
    }
  }
}
