package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/**
 * How far the wet pour bends joists that just meet L/360 under 40 psf, and the bags that fill the
 * bow: in the mean of a beam under an even load 16/25 of its middle.
 */
final class JoistSag implements Rule {

  private static final Amount LIVE_LOAD = Load.ofPoundsPerSquareFoot(40);
  private static final double SPANS = 360;
  private static final double MEAN_SHARE = 16.0 / 25;

  private static final String BASIS =
      "IRC tables R301.5 (40 psf of live load) and R301.7 (floors L/360); joists that just meet them"
          + " are an assumption. A licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.hasWood() || !job.mixes() || job.premises().joistSpan().isEmpty()) {
      return Optional.empty();
    }
    double span = job.premises().joistSpan().getAsDouble();
    double share = job.load().si() / LIVE_LOAD.si();
    double sag = share * span / SPANS;
    double bow = MEAN_SHARE * sag * job.pouredArea();
    return Optional.of(
        Note.of(
                "joist-sag",
                share > 1 ? Severity.DANGER : Severity.CAUTION,
                BASIS,
                "span",
                Amount.of(span, Dimension.PLAN),
                "bags",
                (int) Math.ceil(bow / job.sheet().yieldPerBag()))
            .valued(Amount.of(sag, Dimension.HEIGHT))
            .limited(Amount.of(span / SPANS, Dimension.HEIGHT)));
  }
}
