package dev.fillplane.flatness;

import java.util.List;
import java.util.Optional;

/**
 * The floor classes of ACI 117-10: F-numbers of table 4.8.5.1 (published), and for the three lower
 * classes the gaps under a 10 ft edge of table 4.8.6.1 at all and at 90 % of its places (from
 * memory).
 */
final class AciFloors {

  private static final String SOURCE =
      "ACI 117-10 table 4.8.5.1, local values 3/5 (4.8.5.3); straightedge: table 4.8.6.1, all and"
          + " 90 % of the placements, from memory";
  private static final double MOST = 0.9;

  private AciFloors() {}

  static List<Tolerance> all() {
    return List.of(
        floor("conventional", gaps(3 / 4.0, 1 / 2.0), FNumberClass.overall(20, 15)),
        floor("moderately-flat", gaps(5 / 8.0, 3 / 8.0), FNumberClass.overall(25, 20)),
        floor("flat", gaps(3 / 8.0, 1 / 4.0), FNumberClass.overall(35, 25)),
        floor("very-flat", List.of(), FNumberClass.overall(45, 35)),
        floor("superflat", List.of(), FNumberClass.overall(60, 40)));
  }

  private static List<GapLimit> gaps(double everywhere, double mostly) {
    return List.of(GapLimit.inFeet(10, everywhere, 1), GapLimit.inFeet(10, mostly, MOST));
  }

  private static Tolerance floor(String name, List<GapLimit> gaps, FNumberClass numbers) {
    return Tolerance.of(
        "aci-117-" + name,
        "ACI 117, " + name.replace('-', ' ') + " floor",
        gaps,
        Enough.ALL,
        Optional.of(numbers),
        SOURCE);
  }
}
