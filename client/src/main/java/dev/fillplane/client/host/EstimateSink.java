package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.Plan;

/**
 * Where it goes what came of a unit. Each unit that was taken from the source is handed over once,
 * in the order of the source, by the thread of the run: as one of these, or named in {@link
 * RunSummary#unanswered}. What a sink throws ends the run and reaches its caller.
 */
public interface EstimateSink {

  /** The line items of a unit; asked for by {@link HostRun#estimate}. */
  void add(Unit unit, Estimate estimate);

  /** The plan of a unit; asked for by {@link HostRun#plan} and {@link HostRun#job}. */
  default void add(Unit unit, Plan plan) {}

  /** Why a unit has neither; the others go on. */
  void refuse(Unit unit, Trouble trouble);
}
