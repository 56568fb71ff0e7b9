package dev.fillplane.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.UUID;

/** Gives each request an id, the caller's own where it is a plain word. */
final class RequestIds {

  static final String HEADER = "X-Request-Id";

  private static final String ATTRIBUTE = "fillplane.requestId";
  private static final String PLAIN = "[A-Za-z0-9._-]{1,64}";

  private RequestIds() {}

  static void handle(JavalinConfig config) {
    config.routes.before(context -> context.header(HEADER, of(context)));
  }

  /** The id of the request. */
  static String of(Context context) {
    String known = context.attribute(ATTRIBUTE);
    if (known != null) {
      return known;
    }
    String told = context.header(HEADER);
    String id = told != null && told.matches(PLAIN) ? told : UUID.randomUUID().toString();
    context.attribute(ATTRIBUTE, id);
    return id;
  }
}
