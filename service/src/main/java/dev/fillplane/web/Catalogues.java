package dev.fillplane.web;

import dev.fillplane.flatness.Covering;
import dev.fillplane.flatness.Enough;
import dev.fillplane.flatness.FNumberClass;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.Tolerance;
import dev.fillplane.flatness.Tolerances;
import dev.fillplane.material.Catalogue;
import dev.fillplane.plan.Method;
import dev.fillplane.plan.Methods;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Substrate;
import dev.fillplane.supply.Minimums;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Words;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a request may name, and what a program needs to know before it calls. */
final class Catalogues {

  private final Capabilities capabilities;

  Catalogues(Capabilities capabilities) {
    this.capabilities = capabilities;
  }

  /** A list of a catalogue. */
  record Items<T>(List<T> items) {}

  /** A covering as it is listed. */
  record CoveringInfo(String id, String name, FlatnessLimit limit, String tolerance) {

    static CoveringInfo of(Covering covering) {
      return new CoveringInfo(
          Words.of(covering), covering.title(), covering.limit(), covering.tolerance().id());
    }
  }

  /** A base as it is listed. */
  record SubstrateInfo(
      String id, String name, @Measured(Dimension.HEIGHT) double minimumDepth, String note) {

    static SubstrateInfo of(Substrate substrate) {
      return new SubstrateInfo(
          Words.of(substrate), substrate.title(), Minimums.on(substrate), substrate.note());
    }
  }

  /** One limit, for a span where it depends on it. */
  record ToleranceLimit(
      String id,
      Optional<FlatnessLimit> limit,
      List<GapLimit> figures,
      Enough enough,
      Optional<FNumberClass> fNumbers) {

    static ToleranceLimit of(Tolerance tolerance, double span) {
      return new ToleranceLimit(
          tolerance.id(),
          tolerance.at(span),
          tolerance.figuresAt(span),
          tolerance.enough(),
          tolerance.fNumbers());
    }
  }

  void handle(JavalinConfig config) {
    config.routes.get(
        "/v1/materials", context -> measured(context, new Items<>(Catalogue.sheets())));
    config.routes.get(
        "/v1/coverings",
        context ->
            measured(
                context,
                new Items<>(Arrays.stream(Covering.values()).map(CoveringInfo::of).toList())));
    config.routes.get(
        "/v1/substrates",
        context ->
            measured(
                context,
                new Items<>(Arrays.stream(Substrate.values()).map(SubstrateInfo::of).toList())));
    config.routes.get(
        "/v1/tolerances", context -> measured(context, new Items<>(Tolerances.all())));
    config.routes.get("/v1/tolerances/{id}", Catalogues::tolerance);
    config.routes.get(
        "/v1/methods",
        context -> Reply.kept(context, UnitSystem.METRIC, new Items<Method>(Methods.all())));
    config.routes.get(
        "/v1/capabilities", context -> Reply.kept(context, UnitSystem.METRIC, capabilities));
  }

  private static void tolerance(Context context) {
    UnitSystem units = UnitsParameter.of(context);
    Tolerance tolerance =
        Tolerances.find(context.pathParam("id"))
            .orElseThrow(
                () ->
                    Refusal.of(
                        Problem.Kind.NOT_FOUND,
                        "There is no such tolerance; /v1/tolerances lists them."));
    OptionalDouble span = SpanParameter.of(context, units);
    if (tolerance.spanNeeded() && span.isEmpty()) {
      throw Refusal.of(
          Problem.Kind.BAD_REQUEST, "This tolerance needs the parameter span: " + SpanParameter.OF);
    }
    measured(context, ToleranceLimit.of(tolerance, span.orElse(Double.NaN)));
  }

  private static void measured(Context context, Object body) {
    UnitSystem units = UnitsParameter.of(context);
    Reply.kept(context, units, Answer.of(units, body));
  }
}
