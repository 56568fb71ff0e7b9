package dev.fillplane.web;

import dev.fillplane.job.StoreException;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

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
    LOG.error("request {} ran out of resources", id, error);
    Problem problem =
        Problem.of(Problem.Kind.FAILED, "The service ran out of resources; make the job smaller.");
    byte[] body = Json.bytes(id == null ? problem : problem.forRequest(id), UnitSystem.METRIC);
    response.setStatus(problem.status());
    response.setContentType(MEDIA_TYPE);
    try {
      response.getOutputStream().write(body);
    } catch (IOException e) {
      LOG.debug("the caller of request {} is gone", id, e);
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
    LOG.error("request {} found no store of jobs", RequestIds.of(context), e);
    write(context, Problem.of(Problem.Kind.NO_STORE, e.getMessage()), Map.of("Retry-After", "5"));
  }

  /** The body stopped, or its chunks are none; only the connection throws this. */
  private static void cutShort(IOException e, Context context) {
    LOG.debug("the body of request {} was cut short", RequestIds.of(context), e);
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
    LOG.error("request {} failed", RequestIds.of(context), e);
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
    context.header(RequestIds.HEADER, RequestIds.of(context));
    context
        .status(problem.status())
        .contentType(MEDIA_TYPE)
        .result(Json.bytes(problem.forRequest(RequestIds.of(context)), UnitSystem.METRIC));
  }
}
