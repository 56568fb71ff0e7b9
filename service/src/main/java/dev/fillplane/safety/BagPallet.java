package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Load;
import java.util.Optional;

/** All bags on one pallet of 1.2 m by 0.8 m, up to a tonne, on a floor that may be of joists. */
final class BagPallet implements Rule {

  private static final double FOOTPRINT = 1.2 * 0.8;
  private static final double FULL_PALLET = 1000;
  private static final Amount LIVE_LOAD = Load.ofPoundsPerSquareFoot(40);

  /** Load on joists, as a multiple of the limit, from which it is grave. */
  private static final double FAR_OVER = 2;

  private static final String BASIS =
      "IRC table R301.5: 40 psf of live load in living rooms; the pallet of 1.2 m by 0.8 m is an"
          + " assumption";

  @Override
  public Optional<Note> note(SafetyInput job) {
    Amount load = Load.ofMassPerArea(Math.min(job.powder(), FULL_PALLET) / FOOTPRINT);
    if (!job.maySpan() || !Load.isOver(load, LIVE_LOAD)) {
      return Optional.empty();
    }
    boolean grave = job.hasWood() && load.si() > FAR_OVER * LIVE_LOAD.si();
    return Optional.of(
        Note.of("bag-pallet", grave ? Severity.DANGER : Severity.WARNING, BASIS, "bags", job.bags())
            .valued(load)
            .limited(LIVE_LOAD));
  }
}
