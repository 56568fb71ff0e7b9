package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class WebhookSecretTest {

  private static final String TEXT = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

  /**
   * Source: standard-webhooks/standard-webhooks, commit 14ae328,
   * libraries/java/src/test/java/com/standardwebhooks/WebhookTest.java, verifyWebhookSignWorks.
   */
  @Test
  void signsAsTheReferenceLibrary() {
    byte[] body = "{\"test\": 2432232314}".getBytes(StandardCharsets.UTF_8);
    assertEquals(
        "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=",
        WebhookSecret.of(TEXT).sign("msg_p5jXN8AQM9LWM0D4loKWxJek", 1614265330, body));
  }

  @Test
  void isWrittenAsItWasRead() {
    assertEquals(TEXT, WebhookSecret.of(TEXT).text());
  }

  @Test
  void isNotToldInPassing() {
    assertEquals("whsec_...", WebhookSecret.of(TEXT).toString());
  }

  @Test
  void otherTextsAreNoSecrets() {
    assertThrows(IllegalArgumentException.class, () -> WebhookSecret.of("secret"));
  }
}
