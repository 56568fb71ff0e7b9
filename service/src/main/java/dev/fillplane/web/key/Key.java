package dev.fillplane.web.key;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A key as it is kept: everything but its secret.
 *
 * <p>The secret is 256 random bits, so that nobody can try all of them however fast the hash; a
 * slow hash protects only secrets that people choose, and would cost every request its time.
 *
 * @param id public part of the key
 * @param name what people call it
 * @param sha256 the hash of the secret, in hex
 * @param scopes what it allows
 * @param tenant whose work it opens: keys that follow one another share it; its own id unless told
 * @param origins of which pages may use it; only with the scope browser, and needed there
 * @param perMinute requests in a minute; as the service has it unless told
 * @param made the day it was made
 */
public record Key(
    String id,
    String name,
    String sha256,
    List<Scope> scopes,
    String tenant,
    List<String> origins,
    OptionalInt perMinute,
    Optional<String> made) {

  static final String ID = "[a-z0-9]{12}";

  /**
   * Checks itself.
   *
   * @throws IllegalArgumentException with a sentence for people if something is wrong
   */
  public Key {
    check(id != null && id.matches(ID), "its id must be 12 small letters and digits");
    check(name != null && !name.isBlank(), "it needs a name");
    check(sha256 != null && sha256.matches("[0-9a-f]{64}"), "its sha256 must be 64 hex digits");
    tenant = tenant == null ? id : tenant;
    check(tenant.matches(ID), "its tenant must be 12 small letters and digits");
    scopes = scopes == null ? List.of() : List.copyOf(scopes);
    check(!scopes.isEmpty(), "it needs a scope");
    origins = origins == null ? List.of() : origins.stream().map(Origin::of).toList();
    boolean browser = scopes.contains(Scope.BROWSER);
    check(!browser || scopes.size() == 1, "browser must be its only scope: pages tell their keys");
    check(browser != origins.isEmpty(), "origins belong to the scope browser, which needs one");
    check(perMinute.isEmpty() || perMinute.getAsInt() > 0, "its perMinute must be 1 or more");
  }

  /** Whether {@code secret} is that of this key; takes as long for a wrong one as for the right. */
  boolean opens(String secret) {
    return sameHash(sha256, secret);
  }

  /** Whether the hash of {@code secret} is {@code sha256}, in the same time whatever differs. */
  static boolean sameHash(String sha256, String secret) {
    return MessageDigest.isEqual(HexFormat.of().parseHex(sha256), hash(secret));
  }

  /** The hash that is kept in place of a secret. */
  static byte[] hash(String secret) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static void check(boolean right, String wrong) {
    if (!right) {
      throw new IllegalArgumentException(wrong);
    }
  }
}
