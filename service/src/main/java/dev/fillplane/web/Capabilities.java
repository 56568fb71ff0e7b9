package dev.fillplane.web;

import dev.fillplane.estimate.Item;
import dev.fillplane.estimate.ItemKind;
import dev.fillplane.estimate.RateTerm;
import dev.fillplane.estimate.SaleUnit;
import dev.fillplane.job.JobSettings;
import dev.fillplane.material.Binder;
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
import java.util.Optional;
import java.util.stream.Stream;

/** What a program needs to know before it calls; shape as in the contract. */
record Capabilities(
    String version,
    Optional<Build> build,
    List<String> operations,
    List<QuantityDefault> defaults,
    List<QuantityRange> ranges,
    List<ItemInfo> items,
    List<WorkRate> rates,
    Limits limits) {

  /** What the service was built from. */
  record Build(String commit, String committedAt) {

    static Optional<Build> told() {
      return Version.COMMIT.flatMap(
          commit -> Version.COMMITTED.map(time -> new Build(commit, time)));
    }
  }

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
      return of(term.dimension().unit(system), term.from(), term.to());
    }

    static AmountRange of(Unit unit, double from, double to) {
      return new AmountRange(
          Rounding.toWire(unit.fromSi(from)), Rounding.toWire(unit.fromSi(to)), unit.code());
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

  /** What a line may be of, with the units in which it is sold, the usual one first. */
  record ItemInfo(
      String code, ItemKind kind, String reference, List<String> metric, List<String> us) {

    static ItemInfo of(Item item) {
      return new ItemInfo(
          item.code(),
          item.kind(),
          item.reference(Binder.CEMENT),
          units(item, UnitSystem.METRIC),
          units(item, UnitSystem.US));
    }

    private static List<String> units(Item item, UnitSystem system) {
      return item.saleUnits(system).stream().map(SaleUnit::code).toList();
    }
  }

  /** A rate of work or time of a visit: what holds where it is not told, and its range. */
  record WorkRate(
      String name,
      String pointer,
      UnitValue metric,
      UnitValue us,
      AmountRange metricRange,
      AmountRange usRange) {

    static WorkRate of(RateTerm term) {
      Amount usual = Amount.of(term.usual(), term.dimension());
      return new WorkRate(
          term.name(),
          "#/rates/" + term.property(),
          UnitValue.of(usual, UnitSystem.METRIC),
          UnitValue.of(usual, UnitSystem.US),
          AmountRange.of(term.dimension().unit(UnitSystem.METRIC), term.from(), term.to()),
          AmountRange.of(term.dimension().unit(UnitSystem.US), term.from(), term.to()));
    }
  }

  /** How large a request may be. */
  record Limits(
      long bodyBytes,
      long heldBytes,
      int deadlineSeconds,
      int nesting,
      int rooms,
      int readings,
      int tableValues,
      int cells,
      int batches,
      int variations,
      int lineBytes,
      int streams,
      int jobUnits,
      int jobHours) {}

  /** What {@code contract} and {@code settings} promise. */
  static Capabilities of(Contract contract, Settings settings) {
    Limits limits =
        new Limits(
            settings.largestBody(),
            settings.capacity().heldBytes(),
            (int) settings.capacity().deadline().toSeconds(),
            Json.NESTING_LIMIT,
            contract.schema("PlanRequest").at("/properties/rooms/maxItems").asInt(),
            contract.schema("Setup").at("/properties/readings/maxItems").asInt(),
            contract.schema("Table").at("/properties/values/maxItems").asInt(),
            CellSize.MOST_CELLS,
            BatchLimit.MOST,
            contract.schema("ComparisonRequest").at("/properties/variations/maxItems").asInt(),
            PlanLines.LINE_BYTES,
            PlanStreams.MOST,
            JobSettings.MOST_UNITS,
            (int) settings.jobs().kept().toHours());
    return new Capabilities(
        Version.TEXT,
        Build.told(),
        contract.document().findValuesAsText("operationId"),
        Terms.all().stream()
            .filter(term -> term.usual().isPresent())
            .map(QuantityDefault::of)
            .toList(),
        Terms.all().stream().map(QuantityRange::of).toList(),
        Stream.of(Item.values()).map(ItemInfo::of).toList(),
        RateTerm.all().stream().map(WorkRate::of).toList(),
        limits);
  }
}
