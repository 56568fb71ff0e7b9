package dev.fillplane.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/**
 * Tells what is wrong and odd about a plan request; unlike a plan it answers a body that does not
 * fit its schema.
 */
final class Validation {

  static final String PATH = "/v1/plan-validations";

  private final SchemaGate gate;
  private final Intake intake;

  Validation(SchemaGate gate, Intake intake) {
    this.gate = gate;
    this.intake = intake;
  }

  /** What a body that does not fit its schema gets; the names are those of a plan validation. */
  record Unfit(boolean valid, List<Problem.Fault> errors, List<Problem.Fault> warnings) {}

  /** The answer: its quantities stand in texts only, so that no codes of units are told. */
  record Told(Optional<UnitSystem> units, @JsonUnwrapped Object validation) {}

  void handle(Context context) {
    Accepted.check(context, Calculation.JSON);
    intake.answer(context, Calculation.JSON, body -> answer(Body.parse(body)));
  }

  private byte[] answer(JsonNode tree) {
    UnitSystem units = Body.units(tree);
    return Json.bytes(new Told(Body.told(tree), findings(tree, units)), units);
  }

  private Object findings(JsonNode tree, UnitSystem units) {
    List<Problem.Fault> faults = gate.faults("PlanRequest", tree);
    if (!faults.isEmpty()) {
      return new Unfit(false, faults, List.of());
    }
    return Planner.validate(Desk.read(tree, PlanRequest.class, units));
  }
}
