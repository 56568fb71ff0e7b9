package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The known message is that of the reference library (standard-webhooks/standard-webhooks, commit
 * 14ae328, libraries/java/src/test/java/com/standardwebhooks/WebhookTest.java,
 * verifyWebhookSignWorks); its HMAC was computed anew with Python's hmac.
 */
class WebhookSignaturesTest {
  private static final String SECRET = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";
  private static final String ID = "msg_p5jXN8AQM9LWM0D4loKWxJek";
  private static final String TIME = "1614265330";
  private static final byte[] BODY = "{\"test\": 2432232314}".getBytes(UTF_8);
  private static final String SIGNATURE = "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=";
  private static final String OTHER = "whsec_" + "b3RoZXI".repeat(8);

  @ParameterizedTest
  @ValueSource(longs = {0, 300, -300})
  void theKnownMessageIsGoodForFiveMinutes(long late) {
    assertDoesNotThrow(() -> at(late, SECRET).check(ID, TIME, SIGNATURE, BODY));
  }

  @ParameterizedTest
  @ValueSource(longs = {301, -301, 1_000_000_000})
  void notBeforeOrAfter(long late) {
    refused(() -> at(late, SECRET).check(ID, TIME, SIGNATURE, BODY));
  }

  @Test
  void anyOfSeveralSignaturesWillDo() {
    String several = "v1a,hnO3f9T8 v1,AAAA " + SIGNATURE + " v2,x";
    assertDoesNotThrow(() -> at(0, SECRET).check(ID, TIME, several, BODY));
  }

  @Test
  void anyOfTwoSecretsWillDoWhileTheyChange() throws Exception {
    assertDoesNotThrow(() -> at(0, OTHER, SECRET).check(ID, TIME, SIGNATURE, BODY));
    assertDoesNotThrow(() -> at(0, SECRET, OTHER).check(ID, TIME, signed(OTHER), BODY));
    refused(() -> at(0, OTHER).check(ID, TIME, SIGNATURE, BODY));
  }

  @Test
  void whatWasChangedIsRefused() {
    WebhookSignatures known = at(0, SECRET);
    refused(() -> known.check(ID + "x", TIME, SIGNATURE, BODY));
    refused(() -> known.check(ID, "1614265331", SIGNATURE, BODY));
    refused(() -> known.check(ID, TIME, SIGNATURE, "{\"test\": 2432232315}".getBytes(UTF_8)));
    refused(() -> known.check(ID, TIME, SIGNATURE.replace("v1,", "v1a,"), BODY));
    refused(() -> known.check(ID, TIME, SIGNATURE.replace("v1,", ""), BODY));
    refused(() -> known.check(ID, TIME, SIGNATURE.substring(0, 20), BODY));
    refused(() -> known.check(ID, TIME, "", BODY));
  }

  @Test
  void whatIsMissingOrNoTimeIsRefused() {
    WebhookSignatures known = at(0, SECRET);
    refused(() -> known.check(null, TIME, SIGNATURE, BODY));
    refused(() -> known.check("", TIME, SIGNATURE, BODY));
    refused(() -> known.check(ID, null, SIGNATURE, BODY));
    refused(() -> known.check(ID, TIME, null, BODY));
    for (String time : List.of("", "now", "-1614265330", "1614265330.5", "9".repeat(30))) {
      refused(() -> known.check(ID, time, SIGNATURE, BODY));
    }
  }

  @Test
  void aThousandSignaturesAreNotTriedOut() {
    String many = "v1,AAAA ".repeat(1000) + SIGNATURE;
    refused(() -> at(0, SECRET).check(ID, TIME, many, BODY));
  }

  @Test
  void refusesSecretsThatAreNone() {
    assertThrows(IllegalArgumentException.class, WebhookSignatures::new);
    for (String secret :
        List.of("whsec_", "whsec_c2hvcnQ=", "whsec_%%%", "whsec_" + "AAAA".repeat(22))) {
      assertThrows(IllegalArgumentException.class, () -> new WebhookSignatures(secret), secret);
    }
  }

  private static WebhookSignatures at(long late, String... secrets) {
    Instant now = Instant.ofEpochSecond(Long.parseLong(TIME) + late);
    return new WebhookSignatures(List.of(secrets), Clock.fixed(now, ZoneOffset.UTC));
  }

  private static String signed(String secret) throws Exception {
    Mac mac = Mac.getInstance("HmacSHA256");
    byte[] key = Base64.getDecoder().decode(secret.substring("whsec_".length()));
    mac.init(new SecretKeySpec(key, "HmacSHA256"));
    mac.update((ID + "." + TIME + ".").getBytes(UTF_8));
    return "v1," + Base64.getEncoder().encodeToString(mac.doFinal(BODY));
  }

  private static void refused(Runnable check) {
    assertThrows(WebhookException.class, check::run);
  }
}
