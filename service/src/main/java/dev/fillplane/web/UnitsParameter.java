package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Words;
import io.javalin.http.Context;
import java.util.Arrays;

/** The query parameter {@code units}. */
final class UnitsParameter {

  private UnitsParameter() {}

  /**
   * The units asked for; metric unless told.
   *
   * @throws Refusal if there are no such units
   */
  static UnitSystem of(Context context) {
    String told = context.queryParam("units");
    if (told == null) {
      return UnitSystem.METRIC;
    }
    return Arrays.stream(UnitSystem.values())
        .filter(system -> Words.of(system).equals(told))
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.of(Problem.Kind.BAD_REQUEST, "The parameter units must be metric or us."));
  }
}
