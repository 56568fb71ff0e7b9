package dev.fillplane.client.host;

import java.util.List;
import java.util.Optional;

/**
 * What came of a run.
 *
 * @param done how many units were handed over with line items or a plan
 * @param refused how many units were handed over as a trouble of their own
 * @param unanswered references of the units that were taken from the source but came back with
 *     nothing, for the run ended; ask for them again
 * @param endedBy why the run ended before its source: the service refused the caller, or could not
 *     be reached however often it was asked
 * @param cancelled whether the host wished to stop
 */
public record RunSummary(
    int done,
    int refused,
    List<String> unanswered,
    Optional<RuntimeException> endedBy,
    boolean cancelled) {

  /** Copies the list. */
  public RunSummary {
    unanswered = List.copyOf(unanswered);
  }

  /** Whether all units of the source were handed over. */
  public boolean complete() {
    return unanswered.isEmpty() && endedBy.isEmpty() && !cancelled;
  }
}
