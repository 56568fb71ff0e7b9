package dev.fillplane.client;

import java.time.Duration;
import java.time.Instant;

/** The clock and the waiting of a client, so that tests turn them by hand. */
interface Time {

  /** The time of the machine. */
  Time REAL =
      new Time() {
        @Override
        public Instant now() {
          return Instant.now();
        }

        @Override
        public void pause(Duration length) throws InterruptedException {
          Thread.sleep(length.toMillis());
        }
      };

  Instant now();

  void pause(Duration length) throws InterruptedException;

  /** Pauses, and ends the call where the thread is interrupted meanwhile. */
  default void waitFor(Duration length) {
    try {
      pause(length);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new NoAnswerException("Interrupted while waiting for the service.", e);
    }
  }
}
