package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.Observer;
import dev.fillplane.web.watch.WorkSize;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Takes a body to its answer: held against its schema first, then bound, then answered in the
 * caller's units. Safe to share.
 */
final class Desk {

  private final SchemaGate gate;
  private final Observer observer;

  Desk(SchemaGate gate, Observer observer) {
    this.gate = gate;
    this.observer = observer;
  }

  /**
   * The bytes of the answer.
   *
   * @throws Refusal if the body does not fit its schema or makes no sense
   */
  <Q> byte[] answer(Calculation<Q> calculation, JsonNode tree) {
    return answer(calculation, tree, Calculation.Query.NONE, size -> {});
  }

  /** The same with query parameters; tells {@code sized} how large the work was. */
  <Q> byte[] answer(
      Calculation<Q> calculation,
      JsonNode tree,
      Calculation.Query query,
      Consumer<WorkSize> sized) {
    Refusal.ifAny(gate.faults(calculation.schema(), tree));
    UnitSystem units = Body.units(tree);
    Q request = read(tree, calculation.request(), units);
    try {
      Object answer =
          calculation.work().answer(request, new Calculation.Caller(units, tree, query));
      WorkSize size = WorkSize.of(request, answer);
      observer.computed(size);
      sized.accept(size);
      return bytes(answer, units);
    } catch (FindingsException e) {
      throw Refusal.of(e, units);
    }
  }

  private static byte[] bytes(Object answer, UnitSystem units) {
    if (answer instanceof byte[] bytes) {
      return bytes;
    }
    return answer instanceof String text
        ? text.getBytes(StandardCharsets.UTF_8)
        : Json.bytes(Answer.of(units, answer), units);
  }

  /** Binds a body that its schema has passed; what still does not bind is a fault of ours. */
  static <Q> Q read(JsonNode tree, Class<Q> type, UnitSystem units) {
    try {
      return Json.read(tree, type, units);
    } catch (JsonMappingException e) {
      throw new IllegalStateException("the contract lets through what does not bind", e);
    }
  }
}
