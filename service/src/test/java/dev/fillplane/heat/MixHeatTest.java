package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The heat balance against published and derived mixes; sources stand in the tables. */
class MixHeatTest {

  private static final Units US = Units.of("us");

  /** PCA Design and Control (EB001), hot-weather chapter: from memory, the arithmetic closes. */
  private static final MixHeat HB3 =
      new MixHeat(US.portion(564, 150), US.portion(3100, 80), US.portion(282, 80), 0);

  @ParameterizedTest
  @CsvFileSource(resources = "mix-temperatures.csv", useHeadersInDisplayName = true)
  void mixTemperature(
      String id,
      String system,
      double powder,
      double powderAt,
      double aggregate,
      double aggregateAt,
      double water,
      double waterAt,
      double ice,
      double mix,
      double tolerance) {
    Units units = Units.of(system);
    MixHeat heat =
        new MixHeat(
            units.portion(powder, powderAt),
            units.portion(aggregate, aggregateAt),
            units.portion(water, waterAt),
            units.mass(ice));
    assertEquals(mix, units.written(heat.mixTemperature()), tolerance, id);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "needed-water.csv", useHeadersInDisplayName = true)
  void neededWater(
      String system,
      double powder,
      double powderAt,
      double water,
      double wanted,
      double waterAt,
      double tolerance) {
    Units units = Units.of(system);
    MixHeat heat = MixHeat.of(units.portion(powder, powderAt), units.portion(water, 60));
    double needed = heat.neededWater(units.temperature(wanted));
    assertEquals(waterAt, units.written(needed), tolerance);
  }

  /** Derived: 25 kg at 35 C and 5 kg of water at 25 C come to 20.0 C with 1.0277 kg of ice. */
  @Test
  void neededIce() {
    MixHeat heat = MixHeat.of(new Portion(25, 35), new Portion(5, 25));
    double ice = heat.neededIce(20);
    assertEquals(1.0277, ice, 5e-5);
    MixHeat iced = new MixHeat(heat.powder(), Portion.none(), new Portion(5 - ice, 25), ice);
    assertEquals(20, iced.mixTemperature(), 1e-12);
    assertEquals(ice, iced.neededIce(20), 1e-12);
  }

  /** HB7: how much cooler one part must be for a mix 1 F cooler; from memory, closes. */
  @Test
  void oneFahrenheitLess() {
    double cooler = US.temperature(US.written(HB3.mixTemperature()) - 1);
    assertEquals(80 - 3.9, US.written(HB3.neededWater(cooler)), 0.05);
    assertEquals(1, dropOf(US.portion(564, 150 - 8.8), HB3.aggregate()), 0.01);
    assertEquals(1, dropOf(HB3.powder(), US.portion(3100, 80 - 1.6)), 0.01);
  }

  private static double dropOf(Portion powder, Portion aggregate) {
    MixHeat changed = new MixHeat(powder, aggregate, HB3.water(), 0);
    return US.written(HB3.mixTemperature()) - US.written(changed.mixTemperature());
  }

  /** A formula in circulation puts 0.22 on the water too: a plain mean by mass, 90.0 F for HB3. */
  @Test
  void waterCountsFully() {
    double plainMean = (564 * 150 + 3100 * 80 + 282 * 80) / (564.0 + 3100 + 282);
    assertEquals(90.0, plainMean, 0.05);
    assertTrue(plainMean - US.written(HB3.mixTemperature()) > 1.9);
  }

  @Test
  void neededWaterBringsTheMixThere() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 100; i++) {
      Portion powder = new Portion(random.nextDouble(1, 100), random.nextDouble(0, 40));
      Portion stone = new Portion(random.nextDouble(0, 100), random.nextDouble(0, 40));
      double ice = random.nextDouble(0, 5);
      double wanted = random.nextDouble(10, 30);
      MixHeat heat = new MixHeat(powder, stone, new Portion(5, 12), ice);
      Portion water = new Portion(5, heat.neededWater(wanted));
      assertEquals(wanted, new MixHeat(powder, stone, water, ice).mixTemperature(), 1e-9);
    }
  }

  /** Common practice, no source: 25 to 5 C takes 19 % of the water, 30 to 8 C 20 %. */
  @Test
  void iceForTheBarrel() {
    assertEquals(0.19, WaterBarrel.ice(1, 25, 5), 0.005);
    assertEquals(0.20, WaterBarrel.ice(1, 30, 8), 0.005);
    double ice = WaterBarrel.ice(40, 25, 5);
    assertEquals((40 - ice) * 20, ice * (79.6 + 5), 1e-9);
    assertEquals(0, WaterBarrel.ice(40, 10, 10));
    assertEquals(0, WaterBarrel.ice(40, 10, 15));
  }
}
