package dev.fillplane.web;

import dev.fillplane.job.JobState;
import dev.fillplane.job.JobStatus;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A job as it is told; shape as in the contract. */
record Job(
    String id,
    JobState state,
    int done,
    int of,
    int failed,
    List<JobStatus.FailedUnit> failures,
    String createdAt,
    Optional<String> endedAt,
    String expiresAt) {

  static Job of(JobStatus status) {
    return new Job(
        status.id(),
        status.state(),
        status.done(),
        status.of(),
        status.failed(),
        status.failures(),
        status.createdAt().toString(),
        status.endedAt().map(Instant::toString),
        status.expiresAt().toString());
  }
}
