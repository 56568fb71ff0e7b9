package dev.fillplane.estimate;

import dev.fillplane.finding.Wording;
import dev.fillplane.material.Binder;
import dev.fillplane.plan.Plan;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.supply.Bags;
import java.util.List;
import java.util.Optional;

/** What stays in the floor. */
final class MaterialNeeds {

  /** Share of the likely bags that does not get into the floor: spilt, or left in a barrel. */
  static final double LOST = 1 - (1 - BagOdds.BARREL_RESIDUE) / (1 + BagOdds.SITE_WASTE);

  private MaterialNeeds() {}

  static List<Need> of(PlannedWork job) {
    Plan plan = job.plan();
    double depth = plan.depth().mean();
    return List.of(
        underlayment(job),
        Need.of(
            Item.PRIMER,
            job.pours() > 0 ? plan.quantities().primer().liquid() : 0,
            "#/quantities/primer/liquid",
            "coats",
            plan.quantities().primer().coats()),
        Need.of(Item.MIX_WATER, plan.quantities().mixWater(), "#/quantities/mixWater"),
        Need.of(Item.MOISTURE_BARRIER, job.barrierArea(), "#/drying/moisture/barrier/area"),
        Need.of(Item.CRACK_FILLER, plan.preparation().crackLength(), "#/preparation/crackLength"),
        Need.of(
            Item.JOINT_PROFILE,
            plan.preparation().jointLength(),
            "#/preparation/jointLength",
            "depth",
            Amount.of(Math.max(0, depth), Dimension.HEIGHT)));
  }

  /** The bags of the order: those in the floor, those that get lost, and the reserve. */
  private static Need underlayment(PlannedWork job) {
    Bags bags = job.plan().quantities().bags();
    double inFloor = Math.ceil(bags.likely() * (1 - LOST) - 1e-9);
    boolean gypsum = job.sheet().binder() == Binder.GYPSUM;
    return new Need(
        Item.UNDERLAYMENT,
        Optional.empty(),
        inFloor,
        bags.likely() - inFloor,
        bags.order() - bags.likely(),
        Wording.of(
            gypsum ? "underlayment-gypsum" : "underlayment",
            "bag",
            Amount.of(job.sheet().bagMass(), Dimension.MASS),
            "depth",
            Amount.of(Math.max(0, job.plan().depth().mean()), Dimension.HEIGHT)),
        "#/quantities/bags/order");
  }
}
