package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;

/** Answers the posts of one {@link Calculation}. */
record Endpoint<Q>(Calculation<Q> calculation, Desk desk, Slots slots) {

  void handle(Context context) {
    Accepted.check(context, calculation.mediaType());
    JsonNode tree = Body.tree(context);
    byte[] answer = slots.run(() -> desk.answer(calculation, tree));
    context.contentType(calculation.mediaType()).result(answer);
  }
}
