package dev.fillplane.web;

import dev.fillplane.job.StoreException;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.trace.Trace;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.BareFault;
import dev.fillplane.web.watch.Note;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;

/** Turns everything that ends a request early into a problem document. */
final class Problems {

  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);
  static final String MEDIA_TYPE = "application/problem+json";

  private Problems() {}

  static void handle(JavalinConfig config) {
    config.routes.exception(
        Refusal.class, (refusal, context) -> write(context, refusal.problem(), refusal.headers()));
    config.routes.exception(
        CancellationException.class,
        (stopped, context) -> write(context, stopping(), Map.of("Retry-After", "5")));
    config.routes.exception(StoreException.class, Problems::noStore);
    config.routes.exception(HttpResponseException.class, Problems::refused);
    config.routes.exception(IOException.class, Problems::cutShort);
    config.routes.exception(Exception.class, Problems::failed);
    config.routes.error(408, Problems::timedOut);
    config.router.javaLangErrorHandler(Problems::outOfResources);
  }

  /** The context is gone by now, and with it the request id; the headers are still there. */
  private static void outOfResources(HttpServletResponse response, Error error) {
    String id = response.getHeader(RequestIds.HEADER);
    Trace trace =
        Trace.of(Optional.ofNullable(response.getHeader(RequestIds.TRACE)), Optional.empty());
    log(Level.ERROR, id, trace, error, "the request ran out of resources");
    Problem problem =
        Problem.of(Problem.Kind.FAILED, "The service ran out of resources; make the job smaller.");
    byte[] body =
        Json.bytes(id == null ? problem : problem.forRequest(id, trace), UnitSystem.METRIC);
    response.setStatus(problem.status());
    response.setContentType(MEDIA_TYPE);
    try {
      response.getOutputStream().write(body);
    } catch (IOException e) {
      log(Level.DEBUG, id, trace, e, "the caller is gone");
    }
  }

  /** What the server refuses on its own: unknown paths, wrong methods, bodies too large. */
  private static void refused(HttpResponseException e, Context context) {
    switch (e.getStatus()) {
      case 404 -> write(context, Problem.of(Problem.Kind.NOT_FOUND, "See /openapi.yaml."));
      case 405 -> notAllowed(e, context);
      case 408 -> timedOut(context);
      case 413 ->
          write(context, Problem.of(Problem.Kind.TOO_LARGE, "See limits in /v1/capabilities."));
      default -> {
        if (e.getStatus() >= 500) {
          failed(e, context);
        } else {
          write(context, Problem.of(Problem.Kind.BAD_REQUEST, "The request cannot be read."));
        }
      }
    }
  }

  private static Problem stopping() {
    return Problem.of(Problem.Kind.BUSY, "The service is stopping; ask again in a moment.");
  }

  private static void noStore(StoreException e, Context context) {
    Note note = Note.of(context);
    // The store's words are its own, and tell who runs it what to do.
    LOG.atError()
        .addKeyValue("request", note.id())
        .addKeyValue("trace", note.trace().id())
        .setCause(e)
        .log("the request found no store of jobs");
    write(context, Problem.of(Problem.Kind.NO_STORE, e.getMessage()), Map.of("Retry-After", "5"));
  }

  /** The body stopped, or its chunks are none; only the connection throws this. */
  private static void cutShort(IOException e, Context context) {
    log(Level.DEBUG, context, e, "the body was cut short");
    write(context, Problem.of(Problem.Kind.BAD_REQUEST, "The body did not arrive whole."));
  }

  private static void timedOut(Context context) {
    write(context, Problem.of(Problem.Kind.TIMED_OUT, "Send the body faster."));
  }

  private static void notAllowed(HttpResponseException e, Context context) {
    String allowed = String.join(", ", e.getDetails().values()).toUpperCase(Locale.ROOT);
    write(
        context,
        Problem.of(Problem.Kind.METHOD_NOT_ALLOWED, "This path takes: " + allowed + "."),
        Map.of("Allow", allowed));
  }

  private static void failed(Exception e, Context context) {
    log(Level.ERROR, context, e, "the request failed");
    write(
        context,
        Problem.of(
            Problem.Kind.FAILED, "This is a fault of the service; its log knows the request id."));
  }

  private static void write(Context context, Problem problem) {
    write(context, problem, Map.of());
  }

  private static void write(Context context, Problem problem, Map<String, String> headers) {
    headers.forEach(context::header);
    Note note = Note.of(context);
    note.problem(problem.kind());
    RequestIds.tell(context);
    context
        .status(problem.status())
        .contentType(MEDIA_TYPE)
        .result(Json.bytes(problem.forRequest(note), UnitSystem.METRIC));
  }

  private static void log(Level level, Context context, Throwable fault, String what) {
    log(level, RequestIds.of(context), Note.of(context).trace(), fault, what);
  }

  private static void log(Level level, String id, Trace trace, Throwable fault, String what) {
    LOG.atLevel(level)
        .addKeyValue("request", id)
        .addKeyValue("trace", trace.id())
        .setCause(BareFault.of(fault))
        .log(what);
  }
}
