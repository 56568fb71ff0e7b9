package dev.fillplane.job;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * When a message is sent again that could not be delivered: the example schedule of Standard
 * Webhooks 1.0.0, "Deliverability and reliability", over a little more than three days.
 */
public final class WebhookRetries {

  /**
   * The most by which a wait is stretched, so that many that failed together do not come together.
   */
  static final double JITTER = 0.1;

  /** The longest wait that a receiver may ask for. */
  static final Duration LONGEST = Duration.ofHours(24);

  private static final List<Duration> WAITS =
      List.of(
          Duration.ofSeconds(5),
          Duration.ofMinutes(5),
          Duration.ofMinutes(30),
          Duration.ofHours(2),
          Duration.ofHours(5),
          Duration.ofHours(10),
          Duration.ofHours(14),
          Duration.ofHours(20),
          Duration.ofHours(24));

  private WebhookRetries() {}

  /**
   * When to try next, or nothing if it is time to give up.
   *
   * @param attempts how often it was tried, 1 or more
   * @param last when it was tried last
   * @param chance from 0 to 1, for the stretch of the wait
   * @param asked the wait that the receiver asked for
   */
  public static Optional<Instant> next(
      int attempts, Instant last, double chance, Optional<Duration> asked) {
    if (attempts > WAITS.size()) {
      return Optional.empty();
    }
    Duration wait = WAITS.get(attempts - 1);
    Duration stretched = wait.plusMillis(Math.round(wait.toMillis() * JITTER * chance));
    Duration wanted = asked.filter(some -> some.compareTo(stretched) > 0).orElse(stretched);
    return Optional.of(last.plus(wanted.compareTo(LONGEST) > 0 ? longest(stretched) : wanted));
  }

  /** What a receiver asks for is cut to a day, the schedule is not. */
  private static Duration longest(Duration stretched) {
    return stretched.compareTo(LONGEST) > 0 ? stretched : LONGEST;
  }
}
