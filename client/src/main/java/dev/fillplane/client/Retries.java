package dev.fillplane.client;

import java.time.Duration;

/**
 * How often and how patiently a client asks again.
 *
 * <p>It asks again only where that is safe: the service said that it is busy (503), asked too often
 * (429) or did not get the request in time (408), nothing could be sent, or the answer broke off.
 * Nothing is done twice by that: a calculation changes nothing, and a call that creates something
 * carries the same {@code Idempotency-Key} in each attempt. An answer that is late is not asked for
 * again.
 *
 * <p>The pause is a random part, at least half, of one that doubles from {@link #firstPause} up to
 * {@link #longestPause}; it is never shorter than the {@code Retry-After} of the answer.
 *
 * @param attempts how often to ask in all, at least once
 * @param firstPause pause before the second attempt
 * @param longestPause longest pause that the client chooses by itself
 * @param patience how long the pauses of one call may be in all; a {@code Retry-After} that goes
 *     beyond is not waited for
 */
public record Retries(int attempts, Duration firstPause, Duration longestPause, Duration patience) {

  /** Checks that there is an attempt and no time is negative. */
  public Retries {
    if (attempts < 1) {
      throw new IllegalArgumentException("There must be an attempt: " + attempts);
    }
    if (firstPause.isNegative() || patience.isNegative()) {
      throw new IllegalArgumentException("A pause cannot be shorter than nothing.");
    }
    if (longestPause.compareTo(firstPause) < 0) {
      throw new IllegalArgumentException("The longest pause is shorter than the first.");
    }
  }

  /** Five attempts, pauses from half a second to twenty seconds, two minutes in all. */
  public static Retries usual() {
    return new Retries(5, Duration.ofMillis(500), Duration.ofSeconds(20), Duration.ofMinutes(2));
  }

  /** One attempt and no more. */
  public static Retries none() {
    return new Retries(1, Duration.ZERO, Duration.ZERO, Duration.ZERO);
  }
}
