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
 * An answer that a caller keeps and asks for again only whether it changed: a strong tag of exactly
 * the bytes that are sent (RFC 9110, 8.8.3), so packed ones have another, and 304 to who has them
 * already (13.1.2). Safe to share.
 */
final class Kept {

  private static final int TAG_DIGITS = 32;

  private final String mediaType;
  private final byte[] body;
  private final String tag;
  private volatile byte[] packed = {};

  Kept(String mediaType, byte[] body) {
    this.mediaType = mediaType;
    this.body = body;
    this.tag = digest(body);
  }

  /** Answers with the body, or that the caller's copy is still good. */
  void answer(Context context) {
    boolean pack = body.length >= Packing.LEAST_BYTES && Packing.wanted(context);
    String entity = "\"" + tag + (pack ? "-gzip" : "") + "\"";
    context.disableCompression().header("ETag", entity).header("Cache-Control", "no-cache");
    if (has(context.header("If-None-Match"), entity)) {
      context.status(304);
      return;
    }
    if (pack) {
      context.header("Content-Encoding", Packing.GZIP);
    }
    context.contentType(mediaType).result(pack ? packed() : body);
  }

  /** Packed when it is first asked for; if two ask at once, twice. */
  private byte[] packed() {
    if (packed.length == 0) {
      packed = pack(body);
    }
    return packed;
  }

  private static String digest(byte[] body) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(body);
      return HexFormat.of().formatHex(digest).substring(0, TAG_DIGITS);
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
