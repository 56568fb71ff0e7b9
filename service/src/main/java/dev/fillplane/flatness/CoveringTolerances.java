package dev.fillplane.flatness;

import java.util.List;
import java.util.Optional;

/** What coverings ask for, the figure under the longest edge first. */
final class CoveringTolerances {

  private static final String WOOD = "guideline of the wood flooring trade association: ";
  private static final GapLimit WOOD_TEN_FEET = everywhere(10, 3 / 16.0);

  private CoveringTolerances() {}

  static List<Tolerance> all() {
    return List.of(
        one("astm-f710", "Resilient sheet or plank", 3 / 16.0, "ASTM F710: 3/16 in in 10 ft"),
        all(
            "tile-small",
            "Tile, all edges shorter than 15 in (380 mm)",
            everywhere(10, 1 / 4.0),
            everywhere(1, 1 / 16.0),
            "ANSI A108.02, all edges shorter than 15 in: 1/4 in in 10 ft and 1/16 in in 12 in"),
        all(
            "tile-large",
            "Large tile, an edge of 15 in (380 mm) or more",
            everywhere(10, 1 / 8.0),
            everywhere(2, 1 / 16.0),
            "ANSI A108.02, an edge of 15 in or more: 1/8 in in 10 ft and 1/16 in in 24 in"),
        wood("wood-glued", "Wood, glued down", WOOD_TEN_FEET, 1 / 8.0, ""),
        wood("wood-short-fasteners", "Wood, short fasteners", WOOD_TEN_FEET, 1 / 8.0, ""),
        wood(
            "wood-long-fasteners",
            "Wood, fasteners of 1 1/2 in (38 mm) or more",
            everywhere(10, 1 / 4.0),
            3 / 16.0,
            "fasteners of 1 1/2 in or more: "),
        one(
            "wood-floating",
            "Wood or laminate, floating",
            3 / 16.0,
            WOOD + "3/16 in in 10 ft, as for glued wood"),
        one("carpet", "Carpet", 1 / 4.0, "common practice, no source: 1/4 in in 10 ft"));
  }

  private static Tolerance one(String id, String name, double inches, String source) {
    return Tolerance.of(
        id, name, List.of(everywhere(10, inches)), Enough.ALL, Optional.empty(), source);
  }

  private static Tolerance all(
      String id, String name, GapLimit longEdge, GapLimit shortEdge, String source) {
    return Tolerance.of(
        id, name, List.of(longEdge, shortEdge), Enough.ALL, Optional.empty(), source);
  }

  private static Tolerance wood(
      String id, String name, GapLimit tenFeet, double inSixFeet, String which) {
    String figures = which.isEmpty() ? "3/16 in in 10 ft or 1/8 in" : "1/4 in in 10 ft or 3/16 in";
    return Tolerance.of(
        id,
        name,
        List.of(tenFeet, everywhere(6, inSixFeet)),
        Enough.ONE,
        Optional.empty(),
        WOOD + which + figures + " in 6 ft");
  }

  private static GapLimit everywhere(double feet, double inches) {
    return GapLimit.inFeet(feet, inches, 1);
  }
}
