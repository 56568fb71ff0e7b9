package dev.fillplane.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.zip.GZIPOutputStream;

/**
 * A file of a page with its strong tag, plain and packed.
 *
 * @param type media type
 * @param tag digest of the content in hexadecimal
 */
record PageFile(byte[] plain, byte[] packed, String type, String tag) {

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
    return new PageFile(content, pack(content), type, digest(content));
  }

  /** Answers with the file, or that the caller's copy is still good. */
  void answer(Context context) {
    String accepted = context.header("Accept-Encoding");
    boolean pack = accepted != null && accepted.contains("gzip");
    String entity = "\"" + tag + (pack ? "-gzip\"" : "\"");
    context
        .disableCompression()
        .header("ETag", entity)
        .header("Vary", "Accept-Encoding")
        .header("Cache-Control", "no-cache")
        .header("X-Content-Type-Options", "nosniff");
    String known = context.header("If-None-Match");
    if (known != null && known.contains(entity)) {
      context.status(304);
      return;
    }
    if (pack) {
      context.header("Content-Encoding", "gzip");
    }
    context.contentType(type).result(pack ? packed : plain);
  }

  private static byte[] pack(byte[] content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
      zip.write(content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static String digest(byte[] content) {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(content))
          .substring(0, 32);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
