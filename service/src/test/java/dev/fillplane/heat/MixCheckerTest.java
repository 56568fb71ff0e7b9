package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.finding.FindingsException;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A mix on its own, of the usual sheet. */
class MixCheckerTest {

  private static final String ASSUMED = "material-assumed #/material";
  private static final String ESTIMATE = "time-is-an-estimate #";

  /** Derived: 25 kg at 35 C and 5 kg at 25 C come to 30.24 C; for 23 C the water has 9.8 C. */
  @Test
  void aBag() {
    MixCheck check = check(bag(35, 25, 23));
    assertEquals(30.24, check.mixTemperature(), 0.005);
    assertEquals(9.8, check.needed().waterTemperature().getAsDouble(), 1e-9);
    assertEquals(5 * 15.2 / (25 + 79.6), check.needed().iceMass().getAsDouble(), 1e-9);
    assertEquals(List.of(ASSUMED, "mix-outside-sheet #", ESTIMATE), warnings(check));
  }

  @Test
  void workingTimeCountsTheHeatOfMixing() {
    MixCheck check = check(request(25, 18, Optional.empty(), 18, 0, Optional.empty()));
    assertEquals(18, check.mixTemperature(), 1e-9);
    assertEquals(900, check.workingTime(), 1e-9);
    assertEquals(new Needed(OptionalDouble.empty(), OptionalDouble.empty()), check.needed());
  }

  /** Derived: 25 kg at 5 C and 5 kg at 20 C would need water of 36.5 C for 20 C: refused. */
  @Test
  void hotWaterIsRefused() {
    MixCheck check = check(bag(5, 20, 20));
    assertEquals(12.14, check.mixTemperature(), 0.005);
    assertEquals(OptionalDouble.empty(), check.needed().waterTemperature());
    assertEquals(OptionalDouble.empty(), check.needed().iceMass());
    assertEquals(List.of(ASSUMED, ESTIMATE, "no-water-helps #/wanted"), warnings(check));
  }

  @Test
  void waterThatWouldHaveToBeIceIsRefused() {
    MixCheck check = check(bag(35, 25, 15));
    assertEquals(new Needed(OptionalDouble.empty(), OptionalDouble.empty()), check.needed());
  }

  @Test
  void iceAndAggregateAreForConcreteLikeMixes() {
    Optional<Portion> stone = Optional.of(new Portion(30, 25));
    MixCheck check = check(request(25, 30, stone, 25, 0, Optional.of(new Wanted(20))));
    assertEquals("concrete-like-mix #/aggregate", warnings(check).get(1));
    double ice = check.needed().iceMass().getAsDouble();
    MixHeat iced = new MixHeat(new Portion(25, 30), stone.get(), new Portion(5 - ice, 25), ice);
    assertEquals(20, iced.mixTemperature(), 1e-9);
    assertEquals(
        "concrete-like-mix #/ice",
        warnings(check(request(25, 30, Optional.empty(), 25, 1, Optional.empty()))).get(1));
  }

  /** Most ice is 75 % of the water: ACI 305, as quoted in a trade magazine. */
  @Test
  void iceThatIsMostOfTheWaterIsRefused() {
    Optional<Portion> stone = Optional.of(new Portion(100, 40));
    MixCheck check = check(request(25, 40, stone, 30, 0, Optional.of(new Wanted(10))));
    assertEquals(OptionalDouble.empty(), check.needed().iceMass());
  }

  @Test
  void massesMustBePositive() {
    Optional<Portion> stone = Optional.of(new Portion(-1, 20));
    MixCheckRequest request =
        new MixCheckRequest(
            UnitSystem.METRIC,
            new Portion(0, 20),
            stone,
            new Portion(-5, 20),
            Optional.of(new Ice(0)),
            Optional.empty(),
            null);
    FindingsException refused =
        assertThrows(FindingsException.class, () -> MixChecker.check(request));
    assertEquals(
        List.of("#/powder/mass", "#/water/mass", "#/aggregate/mass", "#/ice/mass"),
        refused.errors().stream().map(error -> error.place().toString()).toList());
  }

  @Test
  void temperaturesMustBeThoseOfASite() {
    FindingsException refused =
        assertThrows(FindingsException.class, () -> MixChecker.check(bag(1e9, -31, 101)));
    assertEquals(
        List.of("#/powder/temperature", "#/water/temperature", "#/wanted/temperature"),
        refused.errors().stream().map(error -> error.place().toString()).toList());
  }

  private static MixCheckRequest bag(double powder, double water, double wanted) {
    return request(25, powder, Optional.empty(), water, 0, Optional.of(new Wanted(wanted)));
  }

  private static MixCheckRequest request(
      double powderMass,
      double powder,
      Optional<Portion> aggregate,
      double water,
      double ice,
      Optional<Wanted> wanted) {
    return new MixCheckRequest(
        UnitSystem.METRIC,
        new Portion(powderMass, powder),
        aggregate,
        new Portion(5, water),
        ice > 0 ? Optional.of(new Ice(ice)) : Optional.empty(),
        wanted,
        MaterialWish.usual());
  }

  private static MixCheck check(MixCheckRequest request) {
    return MixChecker.check(request);
  }

  private static List<String> warnings(MixCheck check) {
    return check.warnings().stream().map(f -> f.code() + " " + f.place()).toList();
  }
}
