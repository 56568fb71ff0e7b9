package dev.fillplane.job;

import dev.fillplane.estimate.DeliveryWish;
import java.util.Optional;

/**
 * What a job request tells beside its units.
 *
 * @param confidence chance with which the order for all units suffices; 0.9
 * @param deliveries how the bags come; all at once
 * @param webhook who is told that the job has ended
 */
public record JobTerms(Double confidence, DeliveryWish deliveries, Optional<WebhookWish> webhook) {

  /** Fills in what was left out. */
  public JobTerms {
    confidence = confidence == null ? 0.9 : confidence;
    deliveries = deliveries == null ? DeliveryWish.usual() : deliveries;
  }
}
