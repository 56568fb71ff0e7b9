package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import dev.fillplane.quantity.WireDigits;
import java.io.IOException;

/**
 * Writes numbers of usual size, which are nearly all of an answer, digit by digit: several times
 * faster than by way of exact decimals, and to the same text.
 */
final class PlainNumber {

  /** Smaller and larger numbers than these are written with an exponent. */
  private static final double LEAST = 1e-3;

  private static final double MOST = 1e7;

  private static final int LONGEST = 32;

  private PlainNumber() {}

  /** Writes a number that is not whole; false, and nothing, if it is not of usual size. */
  static boolean write(double value, JsonGenerator out) throws IOException {
    double size = Math.abs(value);
    if (!(size >= LEAST && size < MOST) || size == Math.rint(size)) {
      return false;
    }
    int places = WireDigits.places(size);
    if (places == WireDigits.UNSURE) {
      return false;
    }
    long digits = WireDigits.digits(size, places);
    if (digits % 10_000 == 0) {
      digits /= 10_000;
      places -= 4;
    }
    while (digits % 10 == 0) {
      digits /= 10;
      places--;
    }
    if (places <= 0) {
      return false;
    }
    write(value < 0, digits, places, out);
    return true;
  }

  private static void write(boolean negative, long digits, int places, JsonGenerator out)
      throws IOException {
    char[] text = new char[LONGEST];
    int at = LONGEST;
    long left = digits;
    for (int i = 0; i < places; i++) {
      text[--at] = (char) ('0' + left % 10);
      left /= 10;
    }
    text[--at] = '.';
    do {
      text[--at] = (char) ('0' + left % 10);
      left /= 10;
    } while (left > 0);
    if (negative) {
      text[--at] = '-';
    }
    out.writeNumber(text, at, LONGEST - at);
  }
}
