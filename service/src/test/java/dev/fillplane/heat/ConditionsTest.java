package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ConditionsTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void nothingToldIsAUsualDay() {
    Site site = Conditions.unknown().site();
    assertEquals(new Site(20, 18, 20, 15, NONE, 0, Optional.empty(), 2), site);
    assertEquals(List.of("air", "floor", "bags", "water"), Conditions.unknown().assumed());
  }

  @Test
  void gapsFollowTheAir() {
    Conditions told = told(OptionalDouble.of(30), NONE, false);
    assertEquals(new Site(30, 28, 30, 15, NONE, 0, Optional.empty(), 2), told.site());
    assertEquals(List.of("floor", "bags", "water"), told.assumed());
  }

  @Test
  void sunWarmsAFloorThatIsNotTold() {
    assertEquals(38, told(OptionalDouble.of(30), NONE, true).site().floor());
    assertEquals(25, told(OptionalDouble.of(30), OptionalDouble.of(25), true).site().floor());
  }

  private static Conditions told(OptionalDouble air, OptionalDouble floor, boolean sun) {
    return new Conditions(air, floor, NONE, NONE, NONE, NONE, Optional.empty(), sun, NONE, null);
  }
}
