package dev.fillplane.flatness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The demands on flatness that a request may name; each figure has its source. */
public final class Tolerances {

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
    all.addAll(AciFloors.all());
    all.addAll(CoveringTolerances.all());
    return List.copyOf(all);
  }

  private static Tolerance din(int line) {
    return new Tolerance(
        "din-18202-line-" + line,
        "DIN 18202, line " + line,
        true,
        Optional.empty(),
        List.of(),
        Enough.ALL,
        Optional.empty(),
        "DIN 18202 table 3 line "
            + line
            + ", straight lines between its distances, rounded half up to whole mm; above 15 m"
            + " from memory");
  }

  private static Tolerance british(int grade, int millimetres) {
    return Tolerance.of(
        "bs-8204-sr" + grade,
        "BS 8204, SR" + grade,
        List.of(new GapLimit(2, millimetres / 1000.0, 1)),
        Enough.ALL,
        Optional.empty(),
        "BS 8204, surface regularity SR" + grade + " under a 2 m straightedge");
  }
}
