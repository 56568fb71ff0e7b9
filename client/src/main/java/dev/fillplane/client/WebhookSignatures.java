package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Checks that a webhook came from the service, unchanged and just now (Standard Webhooks 1.0.0,
 * symmetric signatures {@code v1}).
 *
 * <p>While a secret is changed for another, give both: a message is good where any secret made any
 * of its signatures. The same message may come twice; its id tells.
 *
 * <p>Immutable, for many threads.
 */
public final class WebhookSignatures {
  /** How far the time of a message may be off, either way. */
  public static final Duration WINDOW = Duration.ofMinutes(5);

  private static final String PREFIX = "whsec_";
  private static final String VERSION = "v1,";
  private static final int LEAST_BYTES = 24;
  private static final int MOST_BYTES = 64;
  private static final int MOST_SIGNATURES = 20;

  private final List<SecretKeySpec> secrets;
  private final Clock clock;

  /** With one secret or, while they change, several, such as {@code whsec_...}. */
  public WebhookSignatures(String... secrets) {
    this(List.of(secrets), Clock.systemUTC());
  }

  /**
   * With another clock.
   *
   * @throws IllegalArgumentException if there is no secret or one is none
   */
  public WebhookSignatures(List<String> secrets, Clock clock) {
    if (secrets.isEmpty()) {
      throw new IllegalArgumentException("There is no secret.");
    }
    this.secrets = secrets.stream().map(WebhookSignatures::secret).toList();
    this.clock = clock;
  }

  /**
   * Returns if the message is good.
   *
   * @param id header {@code webhook-id}
   * @param timestamp header {@code webhook-timestamp}
   * @param signatures header {@code webhook-signature}
   * @param body the body, byte for byte as it came
   * @throws WebhookException if it is not; do not act on it
   */
  public void check(String id, String timestamp, String signatures, byte[] body) {
    if (id == null || id.isEmpty() || timestamp == null || signatures == null) {
      throw new WebhookException("A webhook header is missing.");
    }
    checkTime(timestamp);
    String[] told = signatures.strip().split(" +", MOST_SIGNATURES + 1);
    boolean good = false;
    for (SecretKeySpec secret : secrets) {
      byte[] due = signature(secret, id + '.' + timestamp + '.', body);
      for (int i = 0; i < Math.min(told.length, MOST_SIGNATURES); i++) {
        good |= MessageDigest.isEqual(due, told[i].getBytes(UTF_8));
      }
    }
    if (!good) {
      throw new WebhookException("No signature of the webhook is of a known secret.");
    }
  }

  private void checkTime(String timestamp) {
    if (!timestamp.matches("\\d{1,12}")) {
      throw new WebhookException("The time of the webhook is no number of seconds.");
    }
    Instant sent = Instant.ofEpochSecond(Long.parseLong(timestamp));
    if (Duration.between(sent, clock.instant()).abs().compareTo(WINDOW) > 0) {
      throw new WebhookException("The webhook is not of these minutes: " + sent);
    }
  }

  private static byte[] signature(SecretKeySpec secret, String head, byte[] body) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(secret);
      mac.update(head.getBytes(UTF_8));
      return (VERSION + Base64.getEncoder().encodeToString(mac.doFinal(body))).getBytes(UTF_8);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("Every Java has HmacSHA256.", e);
    }
  }

  private static SecretKeySpec secret(String text) {
    String coded = text.startsWith(PREFIX) ? text.substring(PREFIX.length()) : text;
    byte[] key = Base64.getDecoder().decode(coded);
    if (key.length < LEAST_BYTES || key.length > MOST_BYTES) {
      throw new IllegalArgumentException("A secret has 24 to 64 bytes, not " + key.length + ".");
    }
    return new SecretKeySpec(key, "HmacSHA256");
  }
}
