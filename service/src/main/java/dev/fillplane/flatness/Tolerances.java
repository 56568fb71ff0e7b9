package dev.fillplane.flatness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The demands on flatness that a request may name; each figure has its source. */
public final class Tolerances {

  private static final double INCH = 0.0254;
  private static final double TEN_FEET = 3.048;
  private static final String ACI =
      "ACI 117-10 table 4.8.5.1, local values 3/5 (4.8.5.3); straightedge: table 4.8.6.1, all"
          + " placements, from memory";
  private static final List<Tolerance> ALL = make();

  private Tolerances() {}

  /** All of them. */
  public static List<Tolerance> all() {
    return ALL;
  }

  /** The one with {@code id}. */
  public static Optional<Tolerance> find(String id) {
    return ALL.stream().filter(tolerance -> tolerance.id().equals(id)).findFirst();
  }

  private static List<Tolerance> make() {
    List<Tolerance> all = new ArrayList<>();
    for (int line = 1; line <= 7; line++) {
      all.add(din(line));
    }
    all.add(british(1, 3));
    all.add(british(2, 5));
    all.add(british(3, 10));
    all.add(aci("conventional", Optional.of(0.75), 20, 15));
    all.add(aci("moderately-flat", Optional.of(0.625), 25, 20));
    all.add(aci("flat", Optional.of(0.375), 35, 25));
    all.add(aci("very-flat", Optional.empty(), 45, 35));
    all.add(aci("superflat", Optional.empty(), 60, 40));
    all.add(trade("astm-f710", Covering.RESILIENT));
    all.add(trade("tile-small", Covering.TILE));
    all.add(trade("tile-large", Covering.TILE_LARGE));
    all.add(trade("wood-glued", Covering.WOOD_GLUED));
    return List.copyOf(all);
  }

  private static Tolerance din(int line) {
    return new Tolerance(
        "din-18202-line-" + line,
        "DIN 18202, line " + line,
        true,
        Optional.empty(),
        Optional.empty(),
        "DIN 18202 table 3 line "
            + line
            + ", straight lines between its distances, rounded half up to whole mm; above 15 m"
            + " from memory");
  }

  private static Tolerance british(int grade, int millimetres) {
    String source = "BS 8204, surface regularity SR" + grade + " under a 2 m straightedge";
    return new Tolerance(
        "bs-8204-sr" + grade,
        "BS 8204, SR" + grade,
        false,
        Optional.of(new FlatnessLimit(2, millimetres / 1000.0, source)),
        Optional.empty(),
        source);
  }

  private static Tolerance aci(String floor, Optional<Double> inches, double ff, double fl) {
    return new Tolerance(
        "aci-117-" + floor,
        "ACI 117, " + floor.replace('-', ' ') + " floor",
        false,
        inches.map(gap -> new FlatnessLimit(TEN_FEET, gap * INCH, ACI)),
        Optional.of(FNumberClass.overall(ff, fl)),
        ACI);
  }

  private static Tolerance trade(String id, Covering covering) {
    FlatnessLimit limit = covering.limit();
    return new Tolerance(
        id, covering.title(), false, Optional.of(limit), Optional.empty(), limit.source());
  }
}
