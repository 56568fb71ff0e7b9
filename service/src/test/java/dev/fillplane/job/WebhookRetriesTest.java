package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WebhookRetriesTest {

  private static final Instant LAST = Instant.parse("2026-03-01T10:00:00Z");

  /** Source: Standard Webhooks 1.0.0, "Deliverability and reliability", example retry schedule. */
  @ParameterizedTest
  @CsvSource({
    "1, PT5S",
    "2, PT5M",
    "3, PT30M",
    "4, PT2H",
    "5, PT5H",
    "6, PT10H",
    "7, PT14H",
    "8, PT20H",
    "9, PT24H"
  })
  void schedule(int attempts, Duration wait) {
    assertEquals(Optional.of(LAST.plus(wait)), next(attempts, 0, Optional.empty()));
  }

  @Test
  void givesUpAfterTenAttempts() {
    assertEquals(Optional.empty(), next(10, 0, Optional.empty()));
    assertEquals(Optional.empty(), next(11, 0, Optional.of(Duration.ofHours(1))));
  }

  /** 5 minutes and a tenth of them: 5 minutes 30 seconds. */
  @Test
  void isStretchedByChance() {
    assertEquals(Optional.of(LAST.plusSeconds(330)), next(2, 1, Optional.empty()));
    assertEquals(Optional.of(LAST.plusSeconds(315)), next(2, 0.5, Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource({"1, PT2M, PT2M", "2, PT2M, PT5M", "1, PT48H, PT24H", "9, PT48H, PT24H"})
  void receiverMayAskForMoreTime(int attempts, Duration asked, Duration wait) {
    assertEquals(Optional.of(LAST.plus(wait)), next(attempts, 0, Optional.of(asked)));
  }

  private static Optional<Instant> next(int attempts, double chance, Optional<Duration> asked) {
    return WebhookRetries.next(attempts, LAST, chance, asked);
  }
}
