package dev.fillplane.flatness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The demands on flatness that a request may name; each figure has its source. */
public final class Tolerances {

  /** Where standards were compared. */
  private static final String ACCESS_REPORT =
      "as quoted in the report of the US Access Board on surface tolerances, 2011";

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
    for (int grade = 1; grade <= 3; grade++) {
      all.add(british(grade));
    }
    all.add(australian('a', 3, 3));
    all.add(australian('b', 3, 6));
    all.add(australian('c', 0.6, 6));
    all.add(
        underOneEdge("nzs-3114", "NZS 3114", 3, 5, "NZS 3114: 5 mm over 3 m, " + ACCESS_REPORT));
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

  private static Tolerance british(int grade) {
    int[] millimetres = {3, 5, 10};
    return underOneEdge(
        "bs-8204-sr" + grade,
        "BS 8204, SR" + grade,
        2,
        millimetres[grade - 1],
        "BS 8204, surface regularity SR" + grade + " under a 2 m straightedge");
  }

  private static Tolerance australian(char floorClass, double edge, int millimetres) {
    String name = "NATSPEC class " + Character.toUpperCase(floorClass);
    return underOneEdge(
        "natspec-" + floorClass, name, edge, millimetres, name + " (Australia), " + ACCESS_REPORT);
  }

  private static Tolerance underOneEdge(
      String id, String title, double edge, int millimetres, String source) {
    return Tolerance.of(
        id,
        title,
        List.of(new GapLimit(edge, millimetres / 1000.0, 1)),
        Enough.ALL,
        Optional.empty(),
        source);
  }
}
