package dev.fillplane.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.GZIPOutputStream;

/**
 * Answers that a caller keeps and asks for again only whether they changed: a strong tag of exactly
 * the bytes that are sent (RFC 9110, 8.8.3), so packed ones have another, and 304 to who has them
 * already (13.1.2).
 */
final class Kept {

  /** Packing less would cost more than it saves. */
  private static final int LEAST_PACKED = 1_500;

  private static final int TAG_DIGITS = 32;

  private Kept() {}

  /** Answers with {@code body}, or that the caller's copy is still good. */
  static void answer(Context context, String mediaType, byte[] body) {
    boolean packed = body.length >= LEAST_PACKED && Packing.wanted(context);
    String tag = tag(body, packed);
    context.disableCompression().header("ETag", tag).header("Cache-Control", "no-cache");
    if (has(context.header("If-None-Match"), tag)) {
      context.status(304);
      return;
    }
    if (packed) {
      context.header("Content-Encoding", Packing.GZIP);
    }
    context.contentType(mediaType).result(packed ? pack(body) : body);
  }

  private static String tag(byte[] body, boolean packed) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(body);
      String digits = HexFormat.of().formatHex(digest).substring(0, TAG_DIGITS);
      return "\"" + digits + (packed ? "-gzip" : "") + "\"";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Weak comparison, as RFC 9110 asks for here: a caller may have been told a weak tag. */
  private static boolean has(String told, String tag) {
    if (told == null) {
      return false;
    }
    for (String known : told.split(",", -1)) {
      String bare = known.strip();
      if (bare.equals("*") || bare.equals(tag) || bare.equals("W/" + tag)) {
        return true;
      }
    }
    return false;
  }

  private static byte[] pack(byte[] body) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream packing = new GZIPOutputStream(out)) {
      packing.write(body);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
