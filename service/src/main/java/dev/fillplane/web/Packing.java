package dev.fillplane.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Whether a caller takes an answer that is packed, and that every answer depends on it. */
final class Packing {

  static final String GZIP = "gzip";

  /** Packing less would cost more than it saves. */
  static final int LEAST_BYTES = 1_500;

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

  /** Packs at the lowest level: on a local line more would cost more time than it saves. */
  static byte[] fast(byte[] bytes) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 2);
    try (GZIPOutputStream packing = new Fast(out)) {
      packing.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static final class Fast extends GZIPOutputStream {

    Fast(ByteArrayOutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_SPEED);
    }
  }
}
