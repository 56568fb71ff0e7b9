package dev.fillplane.client.host;

import java.util.OptionalInt;

/** Where progress is shown, and whether somebody wants to stop. Called by the thread of the run. */
public interface ProgressView {
  /** Shows nothing and never stops. */
  ProgressView NONE = (done, of) -> {};

  /**
   * Shows how far the run is.
   *
   * @param done units that are planned or refused
   * @param of all units, where that is known
   */
  void show(int done, OptionalInt of);

  /**
   * Whether to stop; asked between units, and by other threads. No unit is taken from the source
   * any more; those on their way are finished and handed over.
   */
  default boolean cancelled() {
    return false;
  }
}
