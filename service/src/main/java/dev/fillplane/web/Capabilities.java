package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.plan.BatchLimit;
import dev.fillplane.plan.Term;
import dev.fillplane.plan.Terms;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Rounding;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.surface.CellSize;
import dev.fillplane.web.json.Json;
import java.util.List;

/** What a program needs to know before it calls; shape as in the contract. */
record Capabilities(
    String version,
    List<String> operations,
    List<QuantityDefault> defaults,
    List<QuantityRange> ranges,
    Limits limits) {

  /** A number with the code of its unit. */
  record UnitValue(double value, String unit) {

    static UnitValue of(Amount amount, UnitSystem system) {
      return new UnitValue(
          Rounding.toWire(amount.in(system)), amount.dimension().unit(system).code());
    }
  }

  /** Two ends of a range. */
  record AmountRange(double from, double to, String unit) {

    static AmountRange of(Term term, UnitSystem system) {
      Unit unit = term.dimension().unit(system);
      return new AmountRange(
          Rounding.toWire(unit.fromSi(term.from())),
          Rounding.toWire(unit.fromSi(term.to())),
          unit.code());
    }
  }

  /** What holds where a quantity is not told. */
  record QuantityDefault(String name, String pointer, UnitValue metric, UnitValue us) {

    static QuantityDefault of(Term term) {
      Amount usual = Amount.of(term.usual().orElseThrow(), term.dimension());
      return new QuantityDefault(
          term.name(),
          term.pointer(),
          UnitValue.of(usual, UnitSystem.METRIC),
          UnitValue.of(usual, UnitSystem.US));
    }
  }

  /** Outside what a quantity is refused. */
  record QuantityRange(String name, String pointer, AmountRange metric, AmountRange us) {

    static QuantityRange of(Term term) {
      return new QuantityRange(
          term.name(),
          term.pointer(),
          AmountRange.of(term, UnitSystem.METRIC),
          AmountRange.of(term, UnitSystem.US));
    }
  }

  /** How large a request may be. */
  record Limits(
      long bodyBytes,
      int nesting,
      int rooms,
      int readings,
      int tableValues,
      int cells,
      int batches,
      int variations,
      int lineBytes,
      int streams) {}

  /** What {@code contract} and {@code settings} promise. */
  static Capabilities of(Contract contract, Settings settings) {
    Limits limits =
        new Limits(
            settings.bodyBytes(),
            Json.NESTING_LIMIT,
            contract.schema("PlanRequest").at("/properties/rooms/maxItems").asInt(),
            contract.schema("Setup").at("/properties/readings/maxItems").asInt(),
            contract.schema("Table").at("/properties/values/maxItems").asInt(),
            CellSize.MOST_CELLS,
            BatchLimit.MOST,
            contract.schema("ComparisonRequest").at("/properties/variations/maxItems").asInt(),
            PlanLines.LINE_BYTES,
            PlanStreams.MOST);
    return new Capabilities(
        Version.TEXT,
        contract.document().findValuesAsText("operationId"),
        Terms.all().stream()
            .filter(term -> term.usual().isPresent())
            .map(QuantityDefault::of)
            .toList(),
        Terms.all().stream().map(QuantityRange::of).toList(),
        limits);
  }
}
