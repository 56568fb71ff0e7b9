package dev.fillplane.job;

import dev.fillplane.estimate.PooledOrder;
import java.util.List;

/**
 * What the order of a job is made of. Read from the store first and pooled later, so that whoever
 * pools may be stopped and never holds a connection.
 *
 * @param of units of the job
 * @param planned those that are planned so far
 */
public record JobNeeds(JobTerms terms, int of, List<PooledOrder.Ordered> planned) {

  /** Keeps its own copy of the list. */
  public JobNeeds {
    planned = List.copyOf(planned);
  }

  /** The order for them. */
  public JobOrder order() {
    return new JobOrder(
        terms.confidence(),
        planned.size(),
        of,
        PooledOrder.of(planned, terms.confidence(), terms.deliveries()));
  }
}
