package dev.fillplane.job;

/** Hears what this node does for jobs. Called by many threads at once; does nothing unless told. */
public interface JobWatch {

  /** Hears nothing. */
  JobWatch NONE = new JobWatch() {};

  /** Work on a unit has begun. */
  default void unitBegun() {}

  /** Work on a unit has ended, with its answer or with a fault of the store. */
  default void unitEnded() {}

  /** The answer of a unit was kept: a plan, or the problem that there is none. */
  default void unitAnswered(boolean planned) {}

  /** An attempt to deliver a message has ended. */
  default void messageSent(Delivery.Outcome outcome) {}

  /** A message was tried for the last time. */
  default void messageGivenUp() {}
}
