package dev.fillplane.estimate;

import dev.fillplane.bay.Joint;
import dev.fillplane.bay.JointKind;
import dev.fillplane.bay.KeptOpen;
import dev.fillplane.plan.Plan;
import dev.fillplane.screed.Rail;
import dev.fillplane.screed.RailSupport;
import dev.fillplane.supply.Dam;
import java.util.ArrayList;
import java.util.List;

/**
 * What the work uses up (common practice, no source, of low confidence): a bead of sealant of 50
 * mm2, a blade for 40 m2, a roller for 60 m2 of coats, 0.3 kg of dust a square metre blasted, all
 * of the floor ground off at 2,400 kg/m3, 10 kg of it in a bag; 5 % of the strip is waste, 10 % of
 * what else is cut or squeezed.
 */
final class ConsumableNeeds {

  private static final double STRIP_WASTE = 0.05;
  private static final double CUT_WASTE = 0.10;
  private static final double BEAD = 50e-6;
  private static final double FLOOR_PER_BLADE = 40;
  private static final double FLOOR_PER_ROLLER = 60;
  private static final double DUST_BLASTED = 0.3;
  private static final double GROUND_DENSITY = 2_400;
  private static final double DUST_PER_BAG = 10;

  private ConsumableNeeds() {}

  static List<Need> of(PlannedWork job) {
    Plan plan = job.plan();
    List<Need> needs = new ArrayList<>();
    String edge = "#/quantities/perimeterSeal";
    needs.add(Need.wasting(Item.PERIMETER_STRIP, job.edge(), STRIP_WASTE, edge));
    needs.add(Need.wasting(Item.SEALANT, BEAD * job.edge(), CUT_WASTE, edge));
    needs.add(Need.wasting(Item.MASKING_TAPE, job.edge(), CUT_WASTE, edge));
    needs.add(
        Need.wasting(
            Item.FOAM, plan.preparation().foamVolume(), CUT_WASTE, "#/preparation/foamVolume"));
    needs.addAll(stops(job));
    needs.add(Need.of(Item.DEPTH_PIN, plan.pins().size(), "#/pins"));
    needs.add(Need.wasting(Item.SCREED_RAIL, rails(plan), CUT_WASTE, "#/rails"));
    needs.add(
        Need.of(Item.GRINDING_BLADE, plan.grinding().area() / FLOOR_PER_BLADE, "#/grinding/area"));
    needs.add(
        Need.of(
            Item.PRIMER_ROLLER, job.primedArea() / FLOOR_PER_ROLLER, "#/quantities/primer/coats"));
    needs.add(Need.of(Item.DUST_BAG, dust(job) / DUST_PER_BAG, "#/depth/area"));
    return needs;
  }

  /** Boards across openings and along the dams of bays, and forms round what stays open. */
  private static List<Need> stops(PlannedWork job) {
    Plan plan = job.plan();
    double openings = plan.quantities().dams().stream().mapToDouble(Dam::length).sum();
    double dams =
        plan.pour().joints().stream()
            .filter(joint -> joint.kind() == JointKind.DAM)
            .mapToDouble(Joint::length)
            .sum();
    List<KeptOpen> open = plan.preparation().keepOpen();
    long forms = open.stream().filter(kept -> kept.outline().isPresent()).count();
    return List.of(
        Need.wasting(
            Item.DAM_BOARD, job.pours() > 0 ? openings : 0, CUT_WASTE, "#/quantities/dams"),
        Need.wasting(Item.BAY_STOP, dams, CUT_WASTE, "#/pour/joints"),
        Need.of(Item.BOX_OUT, forms, "#/preparation/keepOpen"));
  }

  private static double rails(Plan plan) {
    return plan.rails().stream()
        .filter(rail -> rail.support() != RailSupport.EDGE)
        .mapToDouble(ConsumableNeeds::length)
        .sum();
  }

  private static double length(Rail rail) {
    return rail.from().distance(rail.to());
  }

  private static double dust(PlannedWork job) {
    return DUST_BLASTED * job.area() + GROUND_DENSITY * job.plan().grinding().volume();
  }
}
