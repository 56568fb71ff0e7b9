package dev.fillplane.job;

import dev.fillplane.estimate.MaterialOrder;
import java.util.List;

/**
 * What is ordered for all units of a job that are planned so far.
 *
 * @param planned units that are ordered for
 * @param of units of the job
 */
public record JobOrder(double confidence, int planned, int of, List<MaterialOrder> materials) {

  /** Copies the list. */
  public JobOrder {
    materials = List.copyOf(materials);
  }
}
