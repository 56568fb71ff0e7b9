package dev.fillplane.web;

import java.time.Duration;

/**
 * How the service ends.
 *
 * @param drain how long it says that it is not ready before it takes no more requests, so that a
 *     balancer finds the time to turn elsewhere
 * @param end how long requests that are being answered may take then
 */
public record Stopping(Duration drain, Duration end) {

  /** At once, with some seconds for what is being answered. */
  public static Stopping usual() {
    return new Stopping(Duration.ZERO, Duration.ofSeconds(5));
  }
}
