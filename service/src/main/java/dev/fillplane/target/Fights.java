package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells which limits of a target fight: one error for each, at its own place. */
final class Fights {

  /** Fights that are told; the limits of further ones are let go unsaid. */
  private static final int MOST = 20;

  private final Place place;
  private final Findings findings;

  private Fights(Place place, Findings findings) {
    this.place = place;
    this.findings = findings;
  }

  /** The limits that can be kept, once those that fight are told and let go. */
  static Limits settled(Limits limits, Place place, Findings findings) {
    Fights fights = new Fights(place, findings);
    Limits rest = limits;
    for (int i = 0; i < MOST; i++) {
      Optional<Fight> fight = Fight.among(rest);
      if (fight.isEmpty()) {
        return rest;
      }
      fights.tell(fight.get(), rest);
      rest = rest.without(fight.get().bands());
    }
    return rest.without(rest.bands());
  }

  private void tell(Fight fight, Limits limits) {
    boolean ceilings = fight.bands().stream().allMatch(b -> b.kind() == BoundKind.CEILING);
    if (ceilings && fight.bands().size() == 1 && !fight.highs().isEmpty()) {
      tellCeiling(fight, limits);
      return;
    }
    List<Side> sides = sides(fight, limits);
    for (Side side : sides) {
      List<String> others = new ArrayList<>();
      sides.stream().filter(other -> other != side).forEach(other -> others.add(other.name()));
      if (side.place().isPresent()) {
        findings.error(
            "limits-fight",
            side.place().get(),
            "this",
            side.name(),
            "others",
            joined(others),
            "by",
            Amount.of(fight.by(), Dimension.HEIGHT));
      }
    }
  }

  /** What fights: its name in a sentence, and its place in the request if it has one. */
  private record Side(String name, Optional<Place> place) {}

  private List<Side> sides(Fight fight, Limits limits) {
    List<Side> sides = new ArrayList<>();
    for (Band band : fight.bands()) {
      String list = band.kind() == BoundKind.FIXED ? "fixed" : "ceiling";
      String name = band.kind() == BoundKind.FIXED ? "fixed height" : "ceiling";
      sides.add(
          new Side(
              "the " + name + " target/" + list + "/" + band.index(),
              Optional.of(place.at(list).at(band.index()))));
    }
    if (fight.slope()) {
      sides.add(
          limits.level()
              ? new Side("the level shape", Optional.empty())
              : new Side("the slope limit", Optional.of(place.at("maximumSlope"))));
    }
    if (!fight.highs().isEmpty()) {
      sides.add(
          limits.grindDepth() > 0
              ? new Side("the grinding depth", Optional.of(place.at("grind").at("maximumDepth")))
              : new Side("the minimum depth", Optional.of(place.at("minimumDepth"))));
    }
    return sides;
  }

  private static String joined(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private void tellCeiling(Fight fight, Limits limits) {
    Band ceiling = fight.bands().get(0);
    HighPoints highs = limits.highs();
    int spot = nearest(ceiling, fight.highs(), highs);
    findings.error(
        limits.grindDepth() > 0 ? "ceiling-below-ground-floor" : "ceiling-below-minimum",
        place.at("ceiling").at(ceiling.index()),
        "by",
        Amount.of(fight.by(), Dimension.HEIGHT),
        "spot",
        highs.name(spot).map(name -> "reading " + name).orElse("between the readings"),
        "x",
        Amount.of(highs.x(spot), Dimension.PLAN),
        "y",
        Amount.of(highs.y(spot), Dimension.PLAN),
        "elevation",
        Amount.of(highs.elevation(spot), Dimension.HEIGHT));
  }

  private static int nearest(Band band, List<Integer> spots, HighPoints highs) {
    int nearest = spots.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int spot : spots) {
      double distance = Math.hypot(highs.x(spot) - band.x(), highs.y(spot) - band.y());
      if (distance < least) {
        least = distance;
        nearest = spot;
      }
    }
    return nearest;
  }
}
