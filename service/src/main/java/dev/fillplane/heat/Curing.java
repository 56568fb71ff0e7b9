package dev.fillplane.heat;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;

/** What the fresh floor wants until it is dry (common practice, no source). */
final class Curing {

  private static final int SHIELDED_HOURS = 24;
  private static final double LEAST_TEMPERATURE = 10;

  private Curing() {}

  static List<Remark> remarks() {
    return List.of(
        Remark.of("curing-no-draught", "hours", SHIELDED_HOURS),
        Remark.of("curing-no-sun", "hours", SHIELDED_HOURS),
        Remark.of("curing-no-sheeting"),
        Remark.of("curing-not-cold", "least", Amount.of(LEAST_TEMPERATURE, Dimension.TEMPERATURE)),
        Remark.of("prime-next-lift"));
  }
}
