package dev.fillplane.web;

import dev.fillplane.web.watch.Note;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;

/**
 * Tells each request its id and its trace, as the draft of Trace Context's next level has it for
 * answers; and notes which path took it.
 */
final class RequestIds {

  static final String HEADER = Note.ID;
  static final String TRACE = "traceresponse";

  private RequestIds() {}

  static void handle(JavalinConfig config) {
    config.routes.before(RequestIds::tell);
    config.routes.beforeMatched(RequestIds::note);
  }

  /** A HEAD is matched by the path of its GET, which is then no endpoint of its own. */
  private static void note(Context context) {
    var matched = context.endpoints().matchedHttpEndpoint();
    if (matched != null) {
      Note.of(context).route(matched.path);
    }
  }

  /** Tells the ids with the answer. */
  static void tell(Context context) {
    Note note = Note.of(context);
    context.header(HEADER, note.id());
    context.header(TRACE, note.trace().parent());
  }

  /** The id of the request. */
  static String of(Context context) {
    return Note.of(context).id();
  }
}
