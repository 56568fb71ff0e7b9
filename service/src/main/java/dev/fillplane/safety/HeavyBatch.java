package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Batches that are carried to the floor, which the lifting equation does not cover. */
final class HeavyBatch implements Rule {

  private static final double FILTER = 25;
  private static final double WATER_DENSITY = 1000;

  private static final String BASIS =
      "NIOSH Pub. 94-110 does not cover loads that move in themselves, nor carrying over 2 steps; 25"
          + " kg close to the body at knuckle height: filter of HSE L23 and INDG143, no safe weight";

  @Override
  public Optional<Note> note(SafetyInput job) {
    int perBatch = Math.min(job.bags(), job.crew().bagsPerBatch());
    double water = job.sheet().waterPerBag() * WATER_DENSITY;
    double mass = perBatch * (job.sheet().bagMass() + water);
    if (!job.mixesInBarrels() || mass <= FILTER) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of(
                "heavy-batch",
                mass > 2 * FILTER ? Severity.WARNING : Severity.CAUTION,
                BASIS,
                "batches",
                job.batches(),
                "carry",
                Amount.of(job.crew().carryDistance(), Dimension.PLAN))
            .valued(Amount.of(mass, Dimension.MASS))
            .limited(Amount.of(FILTER, Dimension.MASS)));
  }
}
