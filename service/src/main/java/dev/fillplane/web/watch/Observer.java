package dev.fillplane.web.watch;

import dev.fillplane.job.JobWatch;
import java.util.function.DoubleSupplier;

/** Hears what the service does. Called by many threads at once; does nothing unless told. */
public interface Observer extends JobWatch {

  /** Hears and tells nothing. */
  Observer NONE = new Observer() {};

  /**
   * A request was answered.
   *
   * @param method one of few words
   * @param route a path of the contract, or a word that there is no such path
   * @param status of the answer
   * @param nanos from its first byte to the end of the answer
   * @param note what was written down on its way
   */
  default void answered(String method, String route, int status, long nanos, Note note) {}

  /** A plan, or a part of one, was computed, for whatever request, line or unit. */
  default void computed(WorkSize size) {}

  /** A number that is asked for when somebody looks; of a fixed set of names. */
  default void gauge(String name, String what, DoubleSupplier number) {}
}
