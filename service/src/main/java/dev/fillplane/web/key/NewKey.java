package dev.fillplane.web.key;

import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A key that was just made, with the text that only its caller will keep.
 *
 * @param key what is kept of it
 * @param text what its caller sends; not to be found out again
 */
public record NewKey(Key key, String text) {

  /** What somebody wants of a new key. */
  public record Wish(
      String name,
      List<Scope> scopes,
      List<String> origins,
      OptionalInt perMinute,
      Optional<String> tenant) {}

  /**
   * Makes a key, on {@code day}.
   *
   * @throws IllegalArgumentException with a sentence for people if there is no such key
   */
  public static NewKey make(Wish wish, LocalDate day) {
    Written written = Written.random(new SecureRandom());
    Key key =
        new Key(
            written.id(),
            wish.name(),
            HexFormat.of().formatHex(Key.hash(written.secret())),
            wish.scopes(),
            wish.tenant().orElse(written.id()),
            wish.origins(),
            wish.perMinute(),
            Optional.of(day.toString()));
    return new NewKey(key, written.text());
  }

  /** The key without its secret. */
  @Override
  public String toString() {
    return "NewKey[" + key.id() + "]";
  }
}
