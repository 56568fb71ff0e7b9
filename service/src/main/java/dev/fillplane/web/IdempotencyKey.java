package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.Optional;

/**
 * The header Idempotency-Key (draft-ietf-httpapi-idempotency-key-header-07): a string of structured
 * fields (RFC 9651), in quotes; taken without them as well.
 */
final class IdempotencyKey {

  static final String HEADER = "Idempotency-Key";
  static final String REPLAYED = "Idempotency-Replayed";

  private static final String QUOTED = "\"([ !#-\\[\\]-~]|\\\\[\"\\\\]){1,200}\"";
  private static final String PLAIN = "[!#-~]{1,200}";

  private IdempotencyKey() {}

  /**
   * The key of a request, if it has one.
   *
   * @throws Refusal if it is none
   */
  static Optional<String> of(Context context) {
    String told = context.header(HEADER);
    if (told == null) {
      return Optional.empty();
    }
    String key = told.trim();
    if (key.matches(QUOTED)) {
      return Optional.of(key.substring(1, key.length() - 1).replaceAll("\\\\([\"\\\\])", "$1"));
    }
    if (key.matches(PLAIN)) {
      return Optional.of(key);
    }
    throw Refusal.of(
        Problem.Kind.BAD_REQUEST,
        "The Idempotency-Key must be 1 to 200 plain signs, best in double quotes.");
  }
}
