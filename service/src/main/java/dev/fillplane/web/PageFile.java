package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.Map;

/** A file of a page, kept by who has asked for it. */
record PageFile(Kept content) {

  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "json", "application/json",
          "svg", "image/svg+xml");

  static PageFile of(String name, byte[] content) {
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    if (type == null) {
      throw new IllegalStateException("no media type is known for " + name);
    }
    return new PageFile(new Kept(type, content));
  }

  /** Answers with the file, or that the caller's copy is still good. */
  void answer(Context context) {
    context.header("X-Content-Type-Options", "nosniff");
    content.answer(context);
  }
}
