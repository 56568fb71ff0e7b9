package dev.fillplane.web;

import dev.fillplane.web.watch.Note;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;

/** Answers the posts of one {@link Calculation}. */
record Endpoint<Q>(Calculation<Q> calculation, Desk desk, Intake intake) {

  void handle(Context context) {
    Accepted.check(context, calculation.mediaType());
    Calculation.Query query = name -> Optional.ofNullable(context.queryParam(name));
    Note note = Note.of(context);
    Function<byte[], byte[]> work =
        body -> desk.answer(calculation, Body.parse(body), query, note::size);
    if (Operations.light().contains(calculation.path())) {
      intake.answerLight(context, contentType(), work);
    } else {
      intake.answer(context, contentType(), work);
    }
  }

  /** Text is not UTF-8 unless somebody says so. */
  private String contentType() {
    String type = calculation.mediaType();
    return type.startsWith("text/") ? type + "; charset=utf-8" : type;
  }
}
