package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The three forms of a date are the examples of RFC 9110 section 5.6.7: one and the same time. */
class RetryAfterTest {
  private static final Instant THEN = Instant.parse("1994-11-06T08:49:37Z");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Sun, 06 Nov 1994 08:49:37 GMT",
        "Sunday, 06-Nov-94 08:49:37 GMT",
        "Sun Nov  6 08:49:37 1994"
      })
  void readsTheThreeDatesOfTheStandard(String text) {
    assertEquals(pause(90), RetryAfter.read(text, THEN.minusSeconds(90)));
    assertEquals(pause(0), RetryAfter.read(text, THEN.plusSeconds(90)), "past");
  }

  /** Two digits more than 50 years ahead are of the past (RFC 9110 section 5.6.7). */
  @Test
  void readsTwoDigitsOfAYearAsTheStandardSays() {
    Instant now = Instant.parse("2026-03-01T08:00:00Z");
    Instant ahead = Instant.parse("2070-03-01T08:00:00Z");
    Optional<Duration> till = RetryAfter.read("Saturday, 01-Mar-70 08:00:00 GMT", now);
    assertEquals(Optional.of(Duration.between(now, ahead)), till);
    assertEquals(pause(0), RetryAfter.read("Saturday, 01-Mar-80 08:00:00 GMT", now));
  }

  @Test
  void readsSeconds() {
    assertEquals(pause(0), RetryAfter.read("0", THEN));
    assertEquals(pause(120), RetryAfter.read("120", THEN));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "soon", "-1", "1.5", "12345678901234567890", "Sun, 06 Nov 1994"})
  void takesWhatIsNeitherAsNone(String text) {
    assertEquals(Optional.empty(), RetryAfter.read(text, THEN));
  }

  private static Optional<Duration> pause(long seconds) {
    return Optional.of(Duration.ofSeconds(seconds));
  }
}
