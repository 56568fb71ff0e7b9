package dev.fillplane.job;

import java.security.GeneralSecurityException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** HMAC with SHA-256 (RFC 2104). */
final class Hmac {

  private static final String NAME = "HmacSHA256";

  private Hmac() {}

  /** The code of {@code parts}, one after the other. */
  static byte[] sha256(byte[] key, byte[]... parts) {
    try {
      Mac mac = Mac.getInstance(NAME);
      mac.init(new SecretKeySpec(key, NAME));
      for (byte[] part : parts) {
        mac.update(part);
      }
      return mac.doFinal();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has " + NAME, e);
    }
  }
}
