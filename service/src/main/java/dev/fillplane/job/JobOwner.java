package dev.fillplane.job;

import dev.fillplane.trace.Trace;
import java.util.Optional;

/**
 * Whose a job is.
 *
 * @param caller who may see it
 * @param trace of the request that made it, carried on by its messages
 */
public record JobOwner(String caller, Optional<Trace> trace) {

  /** Somebody whose requests are not followed. */
  public static JobOwner of(String caller) {
    return new JobOwner(caller, Optional.empty());
  }
}
