package dev.fillplane.web;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * Where the next page of a job begins.
 *
 * @param job whose page it is
 * @param unit the first of the page, from 0
 */
record Cursor(String job, int unit) {

  /** As callers hand it back. */
  String text() {
    byte[] bytes = (job + "/" + unit).getBytes(StandardCharsets.UTF_8);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The cursor of a text; empty if it is none. */
  static Optional<Cursor> of(String text) {
    try {
      String told = new String(Base64.getUrlDecoder().decode(text), StandardCharsets.UTF_8);
      int slash = told.lastIndexOf('/');
      if (slash < 0 || !told.substring(slash + 1).matches("\\d{1,9}")) {
        return Optional.empty();
      }
      return Optional.of(
          new Cursor(told.substring(0, slash), Integer.parseInt(told.substring(slash + 1))));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
