package dev.fillplane.web;

import java.time.Duration;

/**
 * How slow a caller may be before he is cut off. Every byte of a body or an answer that has gone
 * over the line lengthens its time, as {@link #BYTES_PER_SECOND} allows for a bad line of a phone.
 *
 * @param head for the line and the headers of a request, from their first byte on
 * @param body for a body beside its bytes
 * @param answer for taking an answer beside its bytes
 */
public record Pace(Duration head, Duration body, Duration answer) {

  /** The slowest pace of bytes that is borne for long. */
  public static final int BYTES_PER_SECOND = 10_000;

  /** What is usual. */
  public static Pace usual() {
    return new Pace(Duration.ofSeconds(10), Duration.ofSeconds(15), Duration.ofSeconds(30));
  }

  /** How long a body may take of which {@code bytes} have come. */
  Duration body(long bytes) {
    return body.plusMillis(1_000 * bytes / BYTES_PER_SECOND);
  }

  /** How long an answer of {@code bytes} may take. */
  Duration answer(long bytes) {
    return answer.plusMillis(1_000 * bytes / BYTES_PER_SECOND);
  }
}
