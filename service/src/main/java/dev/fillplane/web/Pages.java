package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What people look at: the page at {@code /}, the element for other pages, the reference at {@code
 * /docs}. Every file is read at the start and has a path of its own, as {@code page/files.txt}
 * lists them; a path that is not listed is not there.
 */
final class Pages {

  private static final String FOLDER = "/dev/fillplane/web/page/";
  private static final String POLICY =
      "default-src 'self'; img-src 'self' blob: data:; object-src 'none'; base-uri 'none';"
          + " form-action 'none'; frame-ancestors 'none'";

  /** The reference sets styles on its elements; its library is not ours to change. */
  private static final String REFERENCE_POLICY = POLICY + "; style-src 'self' 'unsafe-inline'";

  private Pages() {}

  static void handle(JavalinConfig config, Contract contract) {
    for (String line : list()) {
      String[] words = line.split(" ", -1);
      add(config, words[0], PageFile.of(words[1], read(words[1])));
    }
    for (String units : List.of("metric", "us")) {
      String name = "sample-" + units + ".json";
      add(config, "/page/" + name, PageFile.of(name, Json.canonical(contract.example(name))));
    }
  }

  /** Path and resource of each file; a resource is below the folder or begins with a slash. */
  static List<String> list() {
    return new String(read("files.txt"), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private static void add(JavalinConfig config, String path, PageFile file) {
    config.routes.get(path, context -> answer(context, path, file));
  }

  private static void answer(Context context, String path, PageFile file) {
    if (!path.equals("/") && context.path().endsWith("/")) {
      // Links of a page hold from its own path only.
      context.redirect(
          "../" + path.substring(path.lastIndexOf('/') + 1), HttpStatus.PERMANENT_REDIRECT);
      return;
    }
    context.header("Content-Security-Policy", path.equals("/docs") ? REFERENCE_POLICY : POLICY);
    context.header("Referrer-Policy", "no-referrer");
    if (path.startsWith("/elements/")) {
      // Modules of other pages: a browser loads them from here only if that is said.
      context.header("Access-Control-Allow-Origin", "*");
      context.header("Cross-Origin-Resource-Policy", "cross-origin");
    }
    file.answer(context);
  }

  private static byte[] read(String resource) {
    String path = resource.startsWith("/") ? resource : FOLDER + resource;
    try (InputStream in = Pages.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("page/files.txt lists what is not there: " + resource);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
