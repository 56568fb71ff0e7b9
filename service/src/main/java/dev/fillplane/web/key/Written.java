package dev.fillplane.web.key;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A key as its caller has it: {@code fp_<id>_<secret>}. Never logged. */
record Written(String id, String secret) {

  private static final Pattern FORM = Pattern.compile("fp_(" + Key.ID + ")_([A-Za-z0-9_-]{43})");
  private static final String SIGNS = "abcdefghijklmnopqrstuvwxyz0123456789";
  private static final int ID_SIGNS = 12;
  private static final int SECRET_BYTES = 32;

  /** A new key. */
  static Written random(SecureRandom random) {
    StringBuilder id = new StringBuilder();
    for (int i = 0; i < ID_SIGNS; i++) {
      id.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
    }
    byte[] secret = new byte[SECRET_BYTES];
    random.nextBytes(secret);
    return new Written(
        id.toString(), Base64.getUrlEncoder().withoutPadding().encodeToString(secret));
  }

  /** The key that {@code text} writes, if it writes one. */
  static Optional<Written> of(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Optional.of(new Written(matcher.group(1), matcher.group(2)))
        : Optional.empty();
  }

  String text() {
    return "fp_" + id + "_" + secret;
  }

  /** Its id, and no more. */
  @Override
  public String toString() {
    return "fp_" + id;
  }
}
