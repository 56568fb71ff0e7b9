package dev.fillplane.web;

import dev.fillplane.web.watch.Note;
import io.javalin.http.Context;
import java.util.Optional;

/** Answers the posts of one {@link Calculation}. */
record Endpoint<Q>(Calculation<Q> calculation, Desk desk, Slots slots) {

  void handle(Context context) {
    Accepted.check(context, calculation.mediaType());
    byte[] body = Body.bytes(context);
    Calculation.Query query = name -> Optional.ofNullable(context.queryParam(name));
    Note note = Note.of(context);
    byte[] answer = slots.run(() -> desk.answer(calculation, Body.parse(body), query, note::size));
    context.contentType(contentType()).result(answer);
  }

  /** Text is not UTF-8 unless somebody says so. */
  private String contentType() {
    String type = calculation.mediaType();
    return type.startsWith("text/") ? type + "; charset=utf-8" : type;
  }
}
