package dev.fillplane.job;

/** How far a job is. */
public enum JobState {
  /** No unit is done. */
  QUEUED,
  /** Some units are done. */
  RUNNING,
  /** Every unit is done, and at least one is planned. */
  FINISHED,
  /** Every unit is done, and none could be planned. */
  FAILED,
  /** The caller wanted no more. */
  CANCELLED;

  /** Whether nothing more happens. */
  public boolean ended() {
    return this == FINISHED || this == FAILED || this == CANCELLED;
  }
}
