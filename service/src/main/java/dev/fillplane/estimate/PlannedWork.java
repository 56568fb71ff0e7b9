package dev.fillplane.estimate;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.heat.MoistureBarrier;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.pour.Role;
import dev.fillplane.pour.RoleTime;
import dev.fillplane.supply.Lift;
import java.util.List;

/**
 * A plan with how long its work takes, in seconds summed over the people. Nothing is planned here.
 *
 * @param sheet of the underlayment
 */
record PlannedWork(PlanRequest request, Plan plan, DataSheet sheet, WorkRates rates) {

  private static final double HOUR = 3600;

  static PlannedWork of(PlanRequest request, Plan plan, WorkRates rates) {
    DataSheet sheet = Catalogue.resolve(request.material(), Place.root(), new Findings());
    return new PlannedWork(request, plan, sheet, rates);
  }

  /** How often is poured: once a layer. */
  int pours() {
    return plan.quantities().lifts().size();
  }

  int people() {
    return request.crew().people();
  }

  /** Floor that is poured on, with its rooms to the wall; none where nothing is poured. */
  double area() {
    return pours() > 0 ? plan.depth().area() : 0;
  }

  /** Edge that is masked and sealed. */
  double edge() {
    return pours() > 0 ? plan.quantities().perimeterSeal() : 0;
  }

  /** Floor that is given a moisture barrier. */
  double barrierArea() {
    return plan.drying().moisture().barrier().map(MoistureBarrier::area).orElse(0.0);
  }

  double blasting() {
    return HOUR * area() / rates.blast();
  }

  double grinding() {
    return plan.grinding().minutes();
  }

  double filling() {
    return HOUR * plan.preparation().crackLength() / rates.cracks();
  }

  double barrier() {
    return HOUR * barrierArea() / rates.barrier();
  }

  double masking() {
    return HOUR * edge() / rates.mask();
  }

  double sealing() {
    return HOUR * edge() / rates.seal();
  }

  /** Floor times coats, and each layer but the last once. */
  double primedArea() {
    return plan.quantities().primer().coats() * area() + primedLayers();
  }

  /** Of a layer, from 0: the floor, or the layer below. */
  double priming(int layer) {
    double primed =
        layer == 0
            ? plan.quantities().primer().coats() * area()
            : plan.quantities().lifts().get(layer - 1).area();
    return HOUR * primed / rates.prime();
  }

  /** Time on site for the pour of a layer, from 0, by its share of the volume. */
  double attendance(int layer) {
    List<Lift> lifts = plan.quantities().lifts();
    double all = lifts.stream().mapToDouble(Lift::volume).sum();
    double share = all > 0 ? lifts.get(layer).volume() / all : 1.0 / lifts.size();
    return share * people() * plan.pour().totals().end();
  }

  /** Time on site at all pours with nothing to do. */
  double waiting() {
    double busy = plan.pour().totals().work().stream().mapToDouble(RoleTime::busy).sum();
    return pours() > 0 ? Math.max(0, people() * plan.pour().totals().end() - busy) : 0;
  }

  /** Washing up beyond that of the pour itself, all pours together. */
  double washing() {
    double washed =
        plan.pour().totals().work().stream()
            .filter(work -> work.role() == Role.CLEAN)
            .mapToDouble(RoleTime::busy)
            .sum();
    return Math.max(0, pours() * rates.washUp() - washed);
  }

  private double primedLayers() {
    return plan.quantities().lifts().stream()
        .limit(Math.max(0, pours() - 1))
        .mapToDouble(Lift::area)
        .sum();
  }
}
