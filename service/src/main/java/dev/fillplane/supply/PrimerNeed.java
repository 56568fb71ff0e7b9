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
 * coat (common practice, no source: 6 to 10 on dense, 3 to 5 a coat on thirsty bases). A layer of
 * the pour is primed as a normal base.
 */
final class PrimerNeed {

  private static final double LOW_REACH = 1.25;
  private static final double HIGH_REACH = 0.5;
  private static final int HIGH_COATS = 2;

  private final DataSheet sheet;
  private double area;
  private double liquid;
  private int coats;

  /** For the floor of rooms. */
  PrimerNeed(List<Room> rooms, DataSheet sheet) {
    this.sheet = sheet;
    for (Room room : rooms) {
      double floor = room.outline().polygon().getArea();
      area += floor;
      liquid += liquid(floor, room.absorbency(), sheet);
      coats = Math.max(coats, coats(room.absorbency()));
    }
  }

  /** For the whole floor and, between the layers, for each of them but the last. */
  Primer of(List<Lift> lifts) {
    double between =
        lifts.stream().limit(Math.max(0, lifts.size() - 1)).mapToDouble(Lift::area).sum();
    return new Primer(liquid + liquid(between, Absorbency.NORMAL, sheet), coats);
  }

  /**
   * For one layer. The thirst of the floor under it is that of all rooms on average, so that layers
   * add up to the whole.
   *
   * @param onFloor floor that is primed for it
   * @param onLayer what it covers of the layer below
   */
  Primer layer(double onFloor, double onLayer) {
    double floor = area > 0 ? liquid * Math.max(0, onFloor) / area : 0;
    return new Primer(floor + liquid(onLayer, Absorbency.NORMAL, sheet), coats);
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
