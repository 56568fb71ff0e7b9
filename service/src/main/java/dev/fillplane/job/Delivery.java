package dev.fillplane.job;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How one attempt to deliver a message ended.
 *
 * @param outcome what follows from it
 * @param status what the receiver answered, if it did
 * @param why in a few words, for the log and the owner of the job; nothing that the receiver wrote
 * @param retryAfter the wait that the receiver asked for
 */
public record Delivery(
    Outcome outcome, OptionalInt status, String why, Optional<Duration> retryAfter) {

  private static final int GONE = 410;

  /** What follows from an attempt. */
  public enum Outcome {
    /** The receiver has it. */
    DELIVERED,
    /** The receiver wants no more of them: never try again. */
    GONE,
    /** Try again, see {@link WebhookRetries}. */
    FAILED
  }

  static Delivery answered(int status, Optional<Duration> retryAfter) {
    Outcome outcome =
        status >= 200 && status < 300
            ? Outcome.DELIVERED
            : status == GONE ? Outcome.GONE : Outcome.FAILED;
    return new Delivery(outcome, OptionalInt.of(status), "answered " + status, retryAfter);
  }

  static Delivery failed(String why) {
    return new Delivery(Outcome.FAILED, OptionalInt.empty(), why, Optional.empty());
  }
}
