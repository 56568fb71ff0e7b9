package dev.fillplane.pour;

import dev.fillplane.bay.Joint;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * The pour of the whole floor, bay by bay.
 *
 * @param verdict the worst of its bays
 * @param reasons why
 * @param changes the least changes that make it hold; empty where it holds
 * @param minutes from the first water of the first bay to the last batch of the last, without the
 *     breaks between bays
 */
public record Pour(
    Verdict verdict,
    List<Remark> reasons,
    List<PouredBay> bays,
    List<Batch> batches,
    List<Joint> joints,
    CrewNeed crew,
    List<Change> changes,
    @Measured(Dimension.TIME) double minutes) {

  /** Copies the lists. */
  public Pour {
    reasons = List.copyOf(reasons);
    bays = List.copyOf(bays);
    batches = List.copyOf(batches);
    joints = List.copyOf(joints);
    changes = List.copyOf(changes);
  }
}
