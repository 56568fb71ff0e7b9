package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Remark;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** After the pour, on the usual sheet: walk on after 3 h, cover after 24 h, both at 20 C. */
class DryingPlanTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void warmthNeverShortensTheTimesOfTheSheet() {
    Drying warm = plan(Catalogue.usual(), site(30, 28, NONE));
    assertEquals(3 * 3600, warm.walkOn(), 1e-9);
    assertEquals(5 * 3600, warm.nextLift(), 1e-9);
    assertEquals(24 * 3600, warm.covering(), 1e-9);
  }

  /** The rate of 10 C is 0.560 of that of 20 C (Ea 40 kJ/mol, derived). */
  @Test
  void coldLengthensThem() {
    assertEquals(24 * 3600 / 0.560, plan(Catalogue.usual(), site(20, 10, NONE)).covering(), 50);
    assertEquals(24 * 3600 / 0.560, plan(Catalogue.usual(), site(10, 20, NONE)).covering(), 50);
    Drying frozen = plan(Catalogue.usual(), site(-40, -40, NONE));
    assertEquals(frozen, plan(Catalogue.usual(), site(0, 0, NONE)));
  }

  @Test
  void theActivationEnergyOfTheSheetCounts() {
    Drying dull = plan(SheetsOfTwoTimes.sheet(20_000), site(10, 10, NONE));
    assertEquals(24 * 3600 / Math.sqrt(0.560), dull.covering(), 50);
  }

  @Test
  void theAirIsThereWhereItsHumidityIs() {
    assertEquals(Optional.empty(), plan(Catalogue.usual(), site(20, 18, NONE)).air());
    AirReport air = plan(Catalogue.usual(), site(20, 18, OptionalDouble.of(0.5))).air().get();
    assertEquals(AirReport.of(20, 0.5, 21, 18, 0), air);
  }

  /** A thin pour soon takes the temperature of a floor that is warmer. */
  @Test
  void aHotFloorDriesTheSurface() {
    AirReport air = plan(Catalogue.usual(), site(30, 40, OptionalDouble.of(0.3))).air().get();
    assertEquals(AirMoisture.evaporation(40, 30, 0.3, 0), air.evaporation(), 1e-12);
  }

  @Test
  void theFreshFloorIsShielded() {
    assertEquals(
        List.of(
            "curing-no-draught",
            "curing-no-sun",
            "curing-no-sheeting",
            "curing-not-cold",
            "prime-next-lift"),
        plan(Catalogue.usual(), site(20, 18, NONE)).curing().stream().map(Remark::code).toList());
  }

  private static Drying plan(DataSheet sheet, Site site) {
    SlabMoisture slab = SlabCheck.of(Slab.unknown(), 20, Place.root(), new Findings());
    return DryingPlan.of(sheet, site, 21, slab);
  }

  private static Site site(double air, double floor, OptionalDouble humidity) {
    return new Site(air, floor, 20, 15, humidity, 0, Optional.empty(), 2);
  }
}
