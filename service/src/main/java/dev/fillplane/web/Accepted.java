package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.Locale;

/** Whether a caller takes the media type that an operation answers with. */
final class Accepted {

  private Accepted() {}

  /**
   * Checks the Accept header.
   *
   * @throws Refusal if it names media types and none of them is {@code offered}
   */
  static void check(Context context, String offered) {
    String accept = context.header("Accept");
    if (accept == null || accept.isBlank()) {
      return;
    }
    for (String range : accept.split(",", -1)) {
      if (takes(range.toLowerCase(Locale.ROOT), offered)) {
        return;
      }
    }
    throw Refusal.of(
        Problem.Kind.NOT_ACCEPTABLE, "This operation answers with " + offered + " only.");
  }

  private static boolean takes(String range, String offered) {
    String[] parts = range.split(";", -1);
    for (int i = 1; i < parts.length; i++) {
      if (parts[i].trim().matches("q=0(\\.0*)?")) {
        return false;
      }
    }
    String type = parts[0].trim();
    return type.equals("*/*")
        || type.equals(offered)
        || type.equals(offered.substring(0, offered.indexOf('/')) + "/*");
  }
}
