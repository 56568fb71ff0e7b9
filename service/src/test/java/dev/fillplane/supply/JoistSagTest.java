package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.depth.Fill;
import dev.fillplane.material.Catalogue;
import dev.fillplane.quantity.Load;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class JoistSagTest {

  private static final List<Room> ROOMS =
      List.of(room(Substrate.WOOD), room(Substrate.CONCRETE), room(Substrate.WOOD));

  /** IRC table R301.7: 12 ft at L/360 is 0.400 in, 10 ft 1/3 in. */
  @Test
  void underTheLiveLoad() {
    assertEquals(0.400 * 0.0254, JoistSag.allowed(12 * 0.3048), 1e-12);
    assertEquals(0.0254 / 3, JoistSag.middle(10 * 0.3048, JoistSag.LIVE_LOAD), 1e-12);
  }

  /** Derived: 20 mm at 2,000 kg/m3 over 4 m, 2.3 mm. */
  @Test
  void underAPour() {
    assertEquals(0.0023, JoistSag.middle(4, Load.ofMassPerArea(40).si()), 0.00005);
  }

  /**
   * The mean of the bow of a beam under an even load, summed up over its length, is 16/25 of its
   * middle; half of what is poured lies on wood.
   */
  @Test
  void shareOfThePour() {
    double sum = 0;
    int parts = 1000;
    for (int i = 0; i < parts; i++) {
      double x = (i + 0.5) / parts;
      sum += 16.0 / 5 * (x - 2 * x * x * x + x * x * x * x);
    }
    double perMetre = Load.ofMassPerArea(Catalogue.usual().wetDensity()).si();
    List<Fill> fills = List.of(new Fill(1, 0.1), new Fill(5, 0.2), new Fill(1, 0.1));
    assertEquals(
        sum / parts * JoistSag.middle(4, perMetre) / 2,
        JoistSag.share(4, ROOMS, fills, Catalogue.usual()),
        1e-6);
  }

  @Test
  void nothingPouredBendsNothing() {
    List<Fill> none = List.of(new Fill(0, 0), new Fill(0, 0), new Fill(0, 0));
    assertEquals(0, JoistSag.share(4, ROOMS, none, Catalogue.usual()));
  }

  private static Room room(Substrate substrate) {
    return new Room(
        "a", new Outline(List.of()), Optional.of(substrate), null, OptionalInt.empty(), null);
  }
}
