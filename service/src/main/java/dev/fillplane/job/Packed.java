package dev.fillplane.job;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** Bytes made smaller for the store (gzip). */
final class Packed {

  private Packed() {}

  static byte[] pack(byte[] bytes) {
    return pack(bytes, 0, bytes.length);
  }

  static byte[] pack(byte[] bytes, int start, int length) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(length / 4 + 64);
    try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
      zip.write(bytes, start, length);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  static byte[] unpack(byte[] bytes) {
    try (GZIPInputStream zip = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      return zip.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
