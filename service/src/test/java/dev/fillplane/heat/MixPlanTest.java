package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One mix of the usual sheet: 25 kg and 5 L, 15 minutes at 20 C, allowed from 10 to 30 C. */
class MixPlanTest {

  private static final DataSheet SHEET = Catalogue.usual();

  private static final String ESTIMATE = "time-is-an-estimate #/conditions";

  private final Findings findings = new Findings();

  @Test
  void aMildDay() {
    Mix mix = mix(site(20, 20, 20, 15), 2);
    assertEquals((0.22 * 25 * 20 + 5 * 15) / 10.5 + 2, mix.mixTemperature(), 1e-9);
    assertEquals(0.010, mix.waterPerBatch(), 1e-12);
    assertEquals(15.8, mix.needed().waterTemperature().getAsDouble(), 1e-9);
    assertEquals(OptionalDouble.empty(), mix.needed().iceMass());
    assertTrue(mix.workingTime() > 900 && mix.workingTime() < 950);
    assertEquals(List.of(), warnings());
  }

  @Test
  void neededWaterBringsTheMixToTheSheet() {
    Mix mix = mix(site(25, 25, 28, 25), 1);
    double needed = mix.needed().waterTemperature().getAsDouble();
    assertEquals(7, needed, 1e-9);
    assertEquals(5 * 18 / (25 + 79.6), mix.needed().iceMass().getAsDouble(), 1e-9);
    assertEquals(20, mix(site(25, 25, 28, needed), 1).mixTemperature(), 1e-9);
  }

  /** 20 C powder and 15 C water meet at 17.62 C. */
  @Test
  void theHeatOfMixingIsAsTold() {
    Site cool = new Site(20, 20, 20, 15, OptionalDouble.empty(), 0, Optional.empty(), 0.5);
    Mix mix = mix(cool, 1);
    assertEquals((0.22 * 25 * 20 + 5 * 15) / 10.5 + 0.5, mix.mixTemperature(), 1e-9);
    double needed = mix.needed().waterTemperature().getAsDouble();
    assertEquals((19.5 * 10.5 - 0.22 * 25 * 20) / 5, needed, 1e-9);
  }

  @Test
  void whereNoWaterHelpsNoneIsNamed() {
    Mix hot = mix(site(30, 30, 35, 25), 1);
    assertEquals(OptionalDouble.empty(), hot.needed().waterTemperature());
    assertEquals(OptionalDouble.empty(), hot.needed().iceMass());
    assertEquals(
        List.of("mix-outside-sheet #/conditions", ESTIMATE, "no-water-helps #/conditions/water"),
        warnings());
  }

  @Test
  void coldPowderIsNotMendedWithHotWater() {
    Mix cold = mix(site(12, 12, 5, 20), 1);
    assertEquals(OptionalDouble.empty(), cold.needed().waterTemperature());
    assertEquals(List.of(ESTIMATE, "no-water-helps #/conditions/water"), warnings());
  }

  @Test
  void waterThatIsWarmOrOutsideItsLimits() {
    mix(site(20, 20, 20, 25), 1);
    mix(site(20, 20, 25, 5), 1);
    mix(site(20, 20, 15, 30), 1);
    assertEquals(List.of("water-too-warm #/conditions/water"), warnings());
    mix(site(20, 20, 15, 30.1), 1);
    mix(site(20, 20, 25, 4.9), 1);
    assertEquals("water-outside-limits #/conditions/water", warnings().get(1));
    assertEquals("water-outside-limits #/conditions/water", warnings().get(2));
  }

  @Test
  void airAndFloorOutsideTheSheet() {
    mix(site(31, 9, 20, 15), 1);
    assertEquals(
        List.of(
            "air-outside-sheet #/conditions/air",
            "floor-outside-sheet #/conditions/floor",
            ESTIMATE),
        warnings());
  }

  /** 15 minutes hold at 20 C; the mix comes to 19.6 C here. */
  @Test
  void aFloorFarFromTheSheetMakesItsTimesAnEstimate() {
    mix(site(20, 25, 20, 15), 1);
    mix(site(20, 15, 20, 15), 1);
    assertEquals(List.of(), warnings());
    mix(site(20, 25.1, 20, 15), 1);
    assertEquals(List.of(ESTIMATE), warnings());
    mix(site(20, 14.9, 20, 15), 1);
    assertEquals(List.of(ESTIMATE, ESTIMATE), warnings());
  }

  @Test
  void aSecondTimeOfTheSheetSpeaksForItself() {
    DataSheet sheet = SheetsOfTwoTimes.sheet(900, 20, 600, 30);
    MixPlan.of(sheet, site(28, 28, 26, 20), 0.010, 1, place(), findings);
    assertEquals(List.of(), warnings());
  }

  /** 20 C at 70 %: dew point 14.4 C (published table); 20 C at 50 % still: 0.089 kg/m2/h (Uno). */
  @Test
  void moistureOfTheAir() {
    mix(air(20, 17.5, 0.7, 0), 1);
    assertEquals(List.of(), warnings());
    mix(air(20, 17.2, 0.7, 0), 1);
    mix(air(20, 20, 0.5, 15), 1);
    mix(air(30, 30, 0.3, 15), 1);
    assertEquals(
        List.of(
            "floor-near-dew-point #/conditions/floor",
            "surface-dries-fast #/conditions",
            ESTIMATE,
            "surface-dries-too-fast #/conditions"),
        warnings());
  }

  private static Site air(double air, double floor, double humidity, double kilometres) {
    return new Site(
        air, floor, 20.0, 15.0, OptionalDouble.of(humidity), kilometres / 3.6, Optional.empty(), 2);
  }

  @Test
  void coolerWaterNeverShortensTheWorkingTime() {
    double before = 0;
    for (double water = 40; water >= 1; water -= 1) {
      double time = mix(site(30, 28, 30, water), 1).workingTime();
      assertTrue(time >= before - 1e-9, "at " + water);
      before = time;
    }
  }

  @Test
  void aNegativeMeanDepthCountsAsNone() {
    Mix none = MixPlan.of(SHEET, site(20, 30, 20, 15), 0, 1, place(), findings);
    assertEquals(none, MixPlan.of(SHEET, site(20, 30, 20, 15), -0.01, 1, place(), findings));
  }

  private Mix mix(Site conditions, int bags) {
    return MixPlan.of(SHEET, conditions, 0.010, bags, place(), findings);
  }

  private static Place place() {
    return Place.root().at("conditions");
  }

  private static Site site(double air, double floor, double powder, double water) {
    return new Site(air, floor, powder, water, OptionalDouble.empty(), 0.0, Optional.empty(), 2);
  }

  private List<String> warnings() {
    return findings.warnings().stream().map(f -> f.code() + " " + f.place()).toList();
  }
}
