package dev.fillplane.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A job as its caller sees it.
 *
 * @param done units with an answer
 * @param of units of the job
 * @param failed units whose answer is a problem
 * @param failures the first of them
 * @param endedAt empty before
 * @param expiresAt when it is forgotten
 */
public record JobStatus(
    String id,
    JobState state,
    int done,
    int of,
    int failed,
    List<FailedUnit> failures,
    Instant createdAt,
    Optional<Instant> endedAt,
    Instant expiresAt) {

  /** How many failures are told. */
  public static final int FAILURES = 100;

  /** Copies the list. */
  public JobStatus {
    failures = List.copyOf(failures);
  }

  /** A unit without a plan. */
  public record FailedUnit(int unit, String reference) {}
}
