package dev.fillplane.estimate;

import dev.fillplane.plan.Plan;
import dev.fillplane.pour.Crew;
import dev.fillplane.pour.Placing;
import java.util.ArrayList;
import java.util.List;

/**
 * What is hired for the site, in half days, and what is taken away from it. Washing a barrel takes
 * 30 L, of 20 to 40, a pump 60 L (common practice, no source).
 */
final class SiteNeeds {

  private static final double WASH_A_BARREL = 0.030;
  private static final double WASH_A_PUMP = 0.060;
  private static final double WATER_DENSITY = 1000;

  private SiteNeeds() {}

  static List<Need> of(PlannedWork job, Visits visits) {
    List<Need> needs = new ArrayList<>(equipment(job, visits));
    needs.addAll(disposal(job));
    return needs;
  }

  private static List<Need> equipment(PlannedWork job, Visits visits) {
    Crew crew = job.request().crew();
    boolean pumps = crew.placing() == Placing.PUMP;
    double days = visits.pourDays();
    double byHand = pumps ? 0 : days;
    String pour = "#/pour/crew";
    return List.of(
        Need.of(Item.BLASTER, visits.days(job.blasting()), "#/depth/area"),
        Need.of(Item.GRINDER, visits.days(job.grinding()), "#/grinding/minutes"),
        Need.of(Item.DUST_EXTRACTOR, visits.days(job.blasting() + job.grinding()), "#/depth/area"),
        Need.of(Item.MIXER, crew.mixers() * byHand, pour, "count", crew.mixers()),
        Need.of(Item.BARREL, crew.barrels() * byHand, pour, "count", crew.barrels()),
        Need.of(Item.PUMP, pumps ? days : 0, pour),
        Need.of(Item.PLACING_TOOLS, days, pour));
  }

  private static List<Need> disposal(PlannedWork job) {
    Plan plan = job.plan();
    Crew crew = job.request().crew();
    int order = plan.quantities().bags().order();
    double wet = plan.quantities().mass() + WATER_DENSITY * plan.quantities().mixWater();
    double likely = order > 0 ? (double) plan.quantities().bags().likely() / order : 0;
    double wash = crew.placing() == Placing.PUMP ? WASH_A_PUMP : crew.barrels() * WASH_A_BARREL;
    return List.of(
        Need.of(Item.EMPTY_BAGS, order, "#/quantities/bags/order"),
        Need.of(Item.WASTE_MIX, MaterialNeeds.LOST * likely * wet, "#/quantities/mass"),
        Need.of(Item.WASH_WATER, job.pours() * wash, "#/pour/crew"));
  }
}
