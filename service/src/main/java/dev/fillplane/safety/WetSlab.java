package dev.fillplane.safety;

import dev.fillplane.heat.MoistureVerdict;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** A slab over its limit of moisture and bare: nothing is primed or poured on it. */
final class WetSlab implements Rule {

  private static final String BASIS =
      "ASTM F2170 and the limit told, else 75 % (summary of ASTM F710); levellers are no barrier";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes() || job.drying().moisture().verdict() != MoistureVerdict.NO_GO) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of(
                "do-not-pour-on-wet-slab",
                Severity.NOTICE,
                BASIS,
                "tests",
                job.drying().moisture().tests())
            .valued(Amount.of(job.pouredArea(), Dimension.AREA)));
  }
}
