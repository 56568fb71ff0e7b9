package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.stream.StreamSupport;

/** The parts of a plan add up to the whole, and what is ordered by size is. */
final class PlanSums {

  /** Relative; areas and volumes of parts are cut on a lattice of 10 nm. */
  private static final double CUT = 1e-5;

  /** Volumes that are nothing, in the units of the answer. */
  private static final double NOTHING = 1e-6;

  private final JsonNode plan;
  private String broken = "";

  private PlanSums(JsonNode plan) {
    this.plan = plan;
  }

  /** What does not add up, if anything. */
  static Optional<String> broken(JsonNode plan) {
    PlanSums sums = new PlanSums(plan);
    sums.check();
    return sums.broken.isEmpty() ? Optional.empty() : Optional.of(sums.broken);
  }

  private void check() {
    JsonNode depth = plan.get("depth");
    double volume = depth.get("volume").doubleValue();
    same("depth.rooms.volume", sum(depth.get("rooms"), "volume"), volume);
    same("rooms.volume", sum(plan.at("/quantities/rooms"), "volume"), volume);
    same("lifts.volume", sum(plan.at("/quantities/lifts"), "volume"), volume);
    double ribbons = 0;
    for (JsonNode bay : plan.at("/pour/bays")) {
      ribbons += sum(bay.get("ribbons"), "volume");
    }
    if (plan.at("/preparation/keepOpen").isEmpty()) {
      same("ribbons.volume", ribbons, volume);
    } else {
      rising("ribbons", ribbons, volume);
    }
    if (volume > 0) {
      rising("depth", depth, "minimum", "mean", "maximum");
    }
    rising("volumeOdds", depth.get("volumeOdds"), "p10", "p50", "p90");
    rising("bags", plan.at("/quantities/bags"), "p10", "p50", "p90");
    rising("bags", plan.at("/quantities/bags"), "p50", "order");
    for (JsonNode batch : plan.at("/pour/batches")) {
      rising("batch", batch, "mixStart", "firstWater", "ready", "placed", "rolled");
    }
  }

  private static double sum(JsonNode list, String name) {
    return StreamSupport.stream(list.spliterator(), false)
        .mapToDouble(part -> part.get(name).doubleValue())
        .sum();
  }

  private void same(String what, double parts, double whole) {
    if (!(Math.abs(parts - whole) <= CUT * Math.abs(whole) + NOTHING)) {
      broken += "%s add up to %s, not to %s. ".formatted(what, parts, whole);
    }
  }

  private void rising(String what, JsonNode of, String... names) {
    for (int i = 1; i < names.length; i++) {
      JsonNode lower = of.path(names[i - 1]);
      JsonNode higher = of.path(names[i]);
      if (lower.isNumber() && higher.isNumber()) {
        rising(what + "." + names[i], lower.doubleValue(), higher.doubleValue());
      }
    }
  }

  private void rising(String what, double lower, double higher) {
    if (lower > higher * (1 + CUT) + NOTHING) {
      broken += "%s: %s is over %s. ".formatted(what, lower, higher);
    }
  }
}
