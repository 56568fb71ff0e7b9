package dev.fillplane.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;

/**
 * Lets pages of known origins use the light operations (the CORS protocol of the Fetch standard):
 * without credentials of the browser, and never an operation that is heavy.
 */
final class Cors {

  static final String ORIGIN = "Origin";

  private static final String WANTED = "Access-Control-Request-Method";
  private static final String ALLOWED = "Access-Control-Allow-Origin";
  private static final String SENT = "Authorization, Content-Type, If-None-Match, X-Request-Id";
  private static final String SEEN =
      "ETag, Location, Retry-After, RateLimit, RateLimit-Policy, Deprecation, Sunset,"
          + " X-Request-Id";

  /** Two hours, the most that browsers keep it. */
  private static final String MAX_AGE = "7200";

  private final Access access;

  Cors(Access access) {
    this.access = access;
  }

  void handle(JavalinConfig config) {
    Operations.light().forEach(path -> handle(config, path, "POST"));
    Operations.catalogues().forEach(path -> handle(config, path, "GET"));
  }

  private void handle(JavalinConfig config, String path, String method) {
    config.routes.before(path, context -> answer(context, method));
  }

  /** Keeps an answer from the page that asked, as its key is not for pages of that origin. */
  static void withdraw(Context context) {
    context.removeHeader(ALLOWED);
  }

  private void answer(Context context, String method) {
    context.res().addHeader("Vary", ORIGIN);
    String origin = context.header(ORIGIN);
    if (origin == null || !access.knowsOrigin(origin)) {
      return;
    }
    context.header(ALLOWED, origin);
    context.header("Access-Control-Expose-Headers", SEEN);
    if (context.method().name().equals("OPTIONS") && context.header(WANTED) != null) {
      context.header("Access-Control-Allow-Methods", method);
      context.header("Access-Control-Allow-Headers", SENT);
      context.header("Access-Control-Max-Age", MAX_AGE);
      context.status(204).skipRemainingHandlers();
    }
  }
}
