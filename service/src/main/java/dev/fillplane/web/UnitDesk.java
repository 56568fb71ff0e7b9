package dev.fillplane.web;

import dev.fillplane.estimate.UnitNeed;
import dev.fillplane.finding.Stopped;
import dev.fillplane.job.UnitAnswer;
import dev.fillplane.job.UnitPlanner;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.PlannedUnit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.BareFault;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Plans the units of jobs: the same answers as {@code POST /v1/plans}, byte for byte. */
record UnitDesk(Desk desk, Lane lane) implements UnitPlanner {

  private static final Logger LOG = LoggerFactory.getLogger(UnitDesk.class);

  @Override
  public UnitAnswer plan(byte[] body) {
    try {
      return lane.inTurn(body.length, () -> answer(body));
    } catch (Refusal overDeadline) {
      return problem(overDeadline.problem());
    }
  }

  private UnitAnswer answer(byte[] body) {
    AtomicReference<PlannedUnit> planned = new AtomicReference<>();
    Calculation<PlanRequest> plans = Calculations.plans(planned::set);
    try {
      byte[] plan = desk.answer(plans, Body.parse(body));
      return new UnitAnswer(plan, Optional.of(UnitNeed.of(planned.get())));
    } catch (Refusal refusal) {
      return problem(refusal.problem());
    } catch (Stopped e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      // It would fail the same way next time, and the other units must not wait for it.
      LOG.error("a unit of a job failed", BareFault.of(e));
      return problem(
          Problem.of(Problem.Kind.FAILED, "This is a fault of the service; its log knows more."));
    }
  }

  private static UnitAnswer problem(Problem problem) {
    return new UnitAnswer(Json.bytes(problem, UnitSystem.METRIC), Optional.empty());
  }
}
