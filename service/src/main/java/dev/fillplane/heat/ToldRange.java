package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** A range of a quantity that is told, in SI; slips of unit lie outside it. */
public record ToldRange(Dimension dimension, double from, double to) {

  /** Refuses {@code told} where it lies outside. */
  public void check(double told, String name, Place place, Findings findings) {
    if (told >= from && told <= to) {
      return;
    }
    findings.error(
        "out-of-range",
        place,
        "name",
        name,
        "told",
        Amount.of(told, dimension),
        "from",
        Amount.of(from, dimension),
        "to",
        Amount.of(to, dimension));
  }
}
