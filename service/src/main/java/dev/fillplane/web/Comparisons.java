package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.plan.ComparedBy;
import dev.fillplane.plan.Comparer;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Variation;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.json.Words;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Plans a request and variations of it, each told as a merge patch. Every patched request is held
 * against the contract like one that came alone; faults are told at their patch.
 */
final class Comparisons {

  static final String PATH = "/v1/comparisons";
  static final String SCHEMA = "ComparisonRequest";

  private final SchemaGate gate;
  private final Intake intake;

  Comparisons(SchemaGate gate, Intake intake) {
    this.gate = gate;
    this.intake = intake;
  }

  void handle(Context context) {
    Accepted.check(context, Calculation.JSON);
    intake.answer(context, Calculation.JSON, body -> answer(Body.parse(body)));
  }

  private byte[] answer(JsonNode tree) {
    Refusal.ifAny(gate.faultsWith(SCHEMA, "base", tree));
    JsonNode base = tree.get("base");
    List<JsonNode> patched = new Patches(gate).requests(base, tree.get("variations"));
    UnitSystem units = Body.units(base);
    List<Variation> variations = new ArrayList<>();
    for (int i = 0; i < patched.size(); i++) {
      String name = tree.at("/variations/" + i + "/name").textValue();
      PlanRequest request = Desk.read(patched.get(i), PlanRequest.class, units);
      variations.add(new Variation(name, request));
    }
    try {
      PlanRequest request = Desk.read(base, PlanRequest.class, units);
      return Json.bytes(Answer.of(units, Comparer.compare(request, variations, by(tree))), units);
    } catch (FindingsException e) {
      throw Refusal.of(e, units);
    }
  }

  private static ComparedBy by(JsonNode tree) {
    String told = tree.path("by").asText(Words.of(ComparedBy.BAGS));
    return Arrays.stream(ComparedBy.values())
        .filter(by -> Words.of(by).equals(told))
        .findFirst()
        .orElseThrow();
  }
}
