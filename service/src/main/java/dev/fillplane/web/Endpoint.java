package dev.fillplane.web;

import io.javalin.http.Context;

/** Answers the posts of one {@link Calculation}. */
record Endpoint<Q>(Calculation<Q> calculation, Desk desk, Slots slots) {

  void handle(Context context) {
    Accepted.check(context, calculation.mediaType());
    byte[] body = Body.bytes(context);
    byte[] answer = slots.run(() -> desk.answer(calculation, Body.parse(body)));
    context.contentType(calculation.mediaType()).result(answer);
  }
}
