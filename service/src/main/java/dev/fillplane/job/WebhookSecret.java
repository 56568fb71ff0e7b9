package dev.fillplane.job;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A secret that a sender shares with a receiver, and the signatures made with it (Standard Webhooks
 * 1.0.0, symmetric, {@code v1}).
 */
public final class WebhookSecret {

  private static final String PREFIX = "whsec_";

  private final byte[] bytes;

  WebhookSecret(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  /** The secret that {@code text} writes. */
  static WebhookSecret of(String text) {
    if (!text.startsWith(PREFIX)) {
      throw new IllegalArgumentException("A secret of webhooks begins with " + PREFIX + ".");
    }
    return new WebhookSecret(Base64.getDecoder().decode(text.substring(PREFIX.length())));
  }

  /** The signature of a message that is sent at {@code seconds} after the epoch. */
  String sign(String id, long seconds, byte[] body) {
    byte[] head = (id + "." + seconds + ".").getBytes(StandardCharsets.UTF_8);
    return "v1," + Base64.getEncoder().encodeToString(Hmac.sha256(bytes, head, body));
  }

  /** As the receiver needs it. */
  public String text() {
    return PREFIX + Base64.getEncoder().encodeToString(bytes);
  }

  /** Nothing of it. */
  @Override
  public String toString() {
    return PREFIX + "...";
  }
}
