package dev.fillplane.estimate;

import static dev.fillplane.estimate.LabourRole.PREPARE;
import static dev.fillplane.estimate.LabourRole.STAND_BY;

import dev.fillplane.plan.UsualRates;
import dev.fillplane.pour.Role;
import dev.fillplane.pour.RoleTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours of people: before the pour by rates, at the pour by its simulation, and what is paid on
 * top.
 */
final class LabourNeeds {

  private final PlannedWork job;
  private final Visits visits;

  private LabourNeeds(PlannedWork job, Visits visits) {
    this.job = job;
    this.visits = visits;
  }

  static List<Need> of(PlannedWork job, Visits visits) {
    LabourNeeds labour = new LabourNeeds(job, visits);
    List<Need> needs = new ArrayList<>(labour.before());
    needs.addAll(labour.pour());
    needs.addAll(labour.after());
    double worked = needs.stream().mapToDouble(LabourNeeds::told).sum();
    needs.add(
        Need.work(
            Item.LABOUR_HALF_DAYS,
            STAND_BY,
            Math.max(0, visits.paid() - worked),
            "#/pour/totals/end"));
    return needs;
  }

  /** Rounded as its line is, so that all lines together are whole half days. */
  private static double told(Need need) {
    return Measure.up(need.quantity(), SaleUnit.HOUR).value().doubleValue() * UsualRates.HOUR;
  }

  private List<Need> before() {
    String edge = "#/quantities/perimeterSeal";
    double priming = 0;
    for (int layer = 0; layer < job.pours(); layer++) {
      priming += job.priming(layer);
    }
    return List.of(
        prepare(
            Item.LABOUR_SET_UP,
            visits.setUps() * job.rates().setUp(),
            "#/pour/crew",
            "visits",
            visits.setUps()),
        prepare(Item.LABOUR_BLASTING, job.blasting(), "#/depth/area"),
        prepare(Item.LABOUR_GRINDING, job.grinding(), "#/grinding/minutes"),
        prepare(Item.LABOUR_CRACKS, job.filling(), "#/preparation/crackLength"),
        prepare(Item.LABOUR_BARRIER, job.barrier(), "#/drying/moisture/barrier/area"),
        prepare(Item.LABOUR_MASKING, job.masking(), edge),
        prepare(Item.LABOUR_SEALING, job.sealing(), edge),
        prepare(Item.LABOUR_PRIMING, priming, "#/quantities/primer/coats"));
  }

  private List<Need> pour() {
    List<Need> needs = new ArrayList<>();
    List<RoleTime> work = job.pours() > 0 ? job.plan().pour().totals().work() : List.of();
    for (int i = 0; i < work.size(); i++) {
      Role role = work.get(i).role();
      String basis = "#/pour/totals/work/" + i + "/busy";
      needs.add(Need.work(item(role), LabourRole.of(role), work.get(i).busy(), basis));
    }
    needs.add(Need.work(Item.LABOUR_WAITING, STAND_BY, job.waiting(), "#/pour/workers"));
    return needs;
  }

  private List<Need> after() {
    return List.of(
        Need.work(Item.LABOUR_WASHING, LabourRole.CLEAN, job.washing(), "#/pour/totals/batches"),
        prepare(
            Item.LABOUR_RETURN,
            visits.returns() * job.rates().returnVisit(),
            "#/quantities/lifts",
            "visits",
            visits.returns()));
  }

  private static Need prepare(Item item, double seconds, String basis, Object... values) {
    return Need.work(item, PREPARE, seconds, basis, values);
  }

  private static Item item(Role role) {
    return switch (role) {
      case CARRY_AND_POUR -> Item.LABOUR_POURING;
      case RAKE -> Item.LABOUR_RAKING;
      case SPIKE_ROLL -> Item.LABOUR_ROLLING;
      case MIX -> Item.LABOUR_MIXING;
      case MEASURE_WATER -> Item.LABOUR_MEASURING;
      case CLEAN -> Item.LABOUR_CLEANING;
    };
  }
}
