package dev.fillplane.pour;

import dev.fillplane.bay.Joint;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * The pour of the whole floor by one clock, bay after bay. Times count from the start of the work.
 *
 * @param verdict the worst of its bays
 * @param reasons why
 * @param lostEdge where and when it breaks, if it does
 * @param batches in the order of mixing
 * @param workers all of the crew, and what they do
 * @param totals of the batches
 * @param changes the least changes that make it hold; empty where it holds
 * @param minutes from the start of the work to the last batch on the floor
 */
public record Pour(
    Verdict verdict,
    List<Remark> reasons,
    Optional<LostEdge> lostEdge,
    List<PouredBay> bays,
    List<Batch> batches,
    List<Worker> workers,
    PourTotals totals,
    List<Joint> joints,
    CrewNeed crew,
    List<Change> changes,
    @Measured(Dimension.TIME) double minutes) {

  /** Copies the lists. */
  public Pour {
    reasons = List.copyOf(reasons);
    bays = List.copyOf(bays);
    batches = List.copyOf(batches);
    workers = List.copyOf(workers);
    joints = List.copyOf(joints);
    changes = List.copyOf(changes);
  }
}
