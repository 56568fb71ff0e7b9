package dev.fillplane.web;

import dev.fillplane.flatness.Tolerance;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import io.javalin.http.Context;
import java.util.OptionalDouble;

/** The query parameter {@code span}: the distance between two contacts, m. */
final class SpanParameter {

  static final String OF = "a length from 0.1 m to 100 m (0.33 ft to 328 ft), in these units.";

  private static final double MOST = 100;
  private static final double ROUNDING = 1e-9;

  private SpanParameter() {}

  /**
   * The span asked for, if any.
   *
   * @throws Refusal if it is no such length
   */
  static OptionalDouble of(Context context, UnitSystem units) {
    String told = context.queryParam("span");
    if (told == null) {
      return OptionalDouble.empty();
    }
    double span = Dimension.PLAN.unit(units).toSi(number(told));
    if (!(span >= Tolerance.LEAST_SPAN - ROUNDING && span <= MOST)) {
      throw refusal();
    }
    return OptionalDouble.of(Math.max(span, Tolerance.LEAST_SPAN));
  }

  private static double number(String told) {
    try {
      return Double.parseDouble(told);
    } catch (NumberFormatException e) {
      throw refusal();
    }
  }

  private static Refusal refusal() {
    return Refusal.of(Problem.Kind.BAD_REQUEST, "The parameter span must be " + OF);
  }
}
