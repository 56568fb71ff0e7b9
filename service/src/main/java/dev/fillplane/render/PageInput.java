package dev.fillplane.render;

import dev.fillplane.finding.Remark;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;

/** What every part of a pour page works with. */
record PageInput(PlanRequest request, Plan plan, Paper paper, Wording wording, Figures figures) {

  static PageInput of(PlanRequest request, Plan plan, Paper paper, Wording wording) {
    return new PageInput(request, plan, paper, wording, new Figures(request.units()));
  }

  String text(Remark remark) {
    return wording.sentence(remark.code(), remark.values());
  }

  Heights heights() {
    return figures.heights();
  }

  boolean isPoured() {
    return !plan.pour().batches().isEmpty();
  }

  /** How the caller calls the unit. */
  String name() {
    return plan.reference()
        .map(Markup::plain)
        .filter(name -> !name.isBlank())
        .orElse("Unnamed floor");
  }
}
