package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.util.Optional;

/** Answers the posts of one {@link Calculation}. */
record Endpoint<Q>(Calculation<Q> calculation, Desk desk, Slots slots) {

  void handle(Context context) {
    Accepted.check(context, calculation.mediaType());
    JsonNode tree = Body.tree(context);
    Optional<String> layers = Optional.ofNullable(context.queryParam("layers"));
    byte[] answer = slots.run(() -> desk.answer(calculation, tree, layers));
    context.contentType(calculation.mediaType()).result(answer);
  }
}
