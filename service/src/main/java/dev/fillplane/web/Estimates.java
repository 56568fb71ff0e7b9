package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.fillplane.estimate.Estimator;
import dev.fillplane.estimate.LineItems;
import dev.fillplane.estimate.LineItemsRequest;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Methods;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Tells plans line by line and prices them, as JSON or as a table. */
final class Estimates {

  static final String PATH = "/v1/line-items";
  static final String LIST_PATH = "/v1/line-item-lists";
  static final String SCHEMA = "LineItemsRequest";

  private final SchemaGate gate;
  private final Intake intake;

  Estimates(SchemaGate gate, Intake intake) {
    this.gate = gate;
    this.intake = intake;
  }

  void handle(Context context) {
    handle(context, Calculation.JSON, Calculation.JSON, Estimates::json);
  }

  void handleList(Context context) {
    handle(context, Calculations.CSV, Calculations.CSV + "; charset=utf-8", Estimates::table);
  }

  /** Writes an estimate. */
  @FunctionalInterface
  private interface Form {
    byte[] bytes(LineItems items, UnitSystem units);
  }

  private void handle(Context context, String type, String contentType, Form form) {
    Accepted.check(context, type);
    intake.answer(context, contentType, body -> answer(Body.parse(body), form));
  }

  private byte[] answer(JsonNode tree, Form form) {
    Refusal.ifAny(gate.faultsWith(SCHEMA, "plan", tree));
    UnitSystem units = Body.units(tree);
    LineItemsRequest request = Desk.read(patched(tree), LineItemsRequest.class, units);
    Computed computed = new Computed(Version.TEXT, Body.digest(tree), Methods.ids());
    try {
      return form.bytes(Estimator.estimate(request, computed), units);
    } catch (FindingsException e) {
      throw Refusal.of(e, units);
    }
  }

  /** The request with each variation as a whole request in place of its patch. */
  private JsonNode patched(JsonNode tree) {
    JsonNode variations = tree.path("variations");
    List<JsonNode> requests = new Patches(gate).requests(tree.get("plan"), variations);
    ArrayNode whole = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < requests.size(); i++) {
      whole
          .addObject()
          .setAll(Map.of("name", variations.get(i).get("name"), "request", requests.get(i)));
    }
    return LongLists.with(tree, "variations", whole);
  }

  private static byte[] json(LineItems items, UnitSystem units) {
    return Json.bytes(Answer.of(units, items), units);
  }

  private static byte[] table(LineItems items, UnitSystem units) {
    return LineItemList.of(items, units).getBytes(StandardCharsets.UTF_8);
  }
}
