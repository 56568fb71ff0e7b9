package dev.fillplane.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Locale;

/** Whether a caller takes an answer that is packed, and that every answer depends on it. */
final class Packing {

  static final String GZIP = "gzip";

  private Packing() {}

  static void handle(JavalinConfig config) {
    config.routes.before(context -> context.res().addHeader("Vary", "Accept-Encoding"));
  }

  /** Whether Accept-Encoding names gzip (RFC 9110, 12.5.3). */
  static boolean wanted(Context context) {
    String told = context.header("Accept-Encoding");
    if (told == null) {
      return false;
    }
    for (String coding : told.toLowerCase(Locale.ROOT).split(",", -1)) {
      String[] parts = coding.replace(" ", "").split(";", 2);
      if (parts[0].equals(GZIP) || parts[0].equals("x-gzip")) {
        return parts.length == 1 || !parts[1].matches("q=0(\\.0*)?");
      }
    }
    return false;
  }
}
