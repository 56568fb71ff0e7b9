package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import io.javalin.http.Context;

/** Writes small answers. */
final class Reply {

  private Reply() {}

  static void json(Context context, UnitSystem units, Object value) {
    Accepted.check(context, Calculation.JSON);
    context.contentType(Calculation.JSON).result(Json.bytes(value, units));
  }

  /** The same for an answer that does not change while the service runs. */
  static void kept(Context context, UnitSystem units, Object value) {
    Accepted.check(context, Calculation.JSON);
    new Kept(Calculation.JSON, Json.bytes(value, units)).answer(context);
  }
}
