package dev.fillplane.supply;

import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Absorbency;
import dev.fillplane.room.Room;
import java.util.List;

/**
 * Primer by the thirst of the base, over the whole area of a room, and again between lifts.
 *
 * <p>The sheet's coverage is that of one coat on a normal base. A dense base takes one coat that
 * goes further, a thirsty one two coats that go half as far: with 8 m2/L these are 10 and 4 m2/L a
 * coat (common practice, no source: 6 to 10 on dense, 3 to 5 a coat on thirsty bases).
 */
final class PrimerNeed {

  private static final double LOW_REACH = 1.25;
  private static final double HIGH_REACH = 0.5;
  private static final int HIGH_COATS = 2;

  private PrimerNeed() {}

  /** For rooms, and lifts from the bottom; every lift but the last is primed as a normal base. */
  static Primer of(List<Room> rooms, List<Lift> lifts, DataSheet sheet) {
    double liquid = 0;
    int coats = 0;
    for (Room room : rooms) {
      liquid += liquid(room.outline().polygon().getArea(), room.absorbency(), sheet);
      coats = Math.max(coats, coats(room.absorbency()));
    }
    for (int i = 0; i < lifts.size() - 1; i++) {
      liquid += liquid(lifts.get(i).area(), Absorbency.NORMAL, sheet);
    }
    return new Primer(liquid, coats);
  }

  /** For an area that is poured in a number of lifts, each of them over all of it. */
  static Primer of(double area, Absorbency absorbency, int lifts, DataSheet sheet) {
    double between = Math.max(0, lifts - 1) * liquid(area, Absorbency.NORMAL, sheet);
    return new Primer(liquid(area, absorbency, sheet) + between, coats(absorbency));
  }

  private static double liquid(double area, Absorbency absorbency, DataSheet sheet) {
    return coats(absorbency) * area / (reach(absorbency) * sheet.primerCoverage());
  }

  private static int coats(Absorbency absorbency) {
    return absorbency == Absorbency.HIGH ? HIGH_COATS : 1;
  }

  private static double reach(Absorbency absorbency) {
    return switch (absorbency) {
      case LOW -> LOW_REACH;
      case NORMAL -> 1;
      case HIGH -> HIGH_REACH;
    };
  }
}
