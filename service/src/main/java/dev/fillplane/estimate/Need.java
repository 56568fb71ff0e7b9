package dev.fillplane.estimate;

import dev.fillplane.finding.Wording;
import java.util.Optional;

/**
 * How much of an item a plan takes, in the unit inside of how it is sold.
 *
 * @param quantity without waste
 * @param waste on top
 * @param reserve on top of both
 * @param basis where in the plan it comes from
 */
record Need(
    Item item,
    Optional<LabourRole> role,
    double quantity,
    double waste,
    double reserve,
    Wording wording,
    String basis) {

  /** A need without waste, worded by the code of its item. */
  static Need of(Item item, double quantity, String basis, Object... values) {
    return wasting(item, quantity, 0, basis, values);
  }

  /**
   * A need with waste.
   *
   * @param share waste as a share of the quantity
   */
  static Need wasting(Item item, double quantity, double share, String basis, Object... values) {
    Wording wording = Wording.of(item.code(), values);
    return new Need(item, Optional.empty(), quantity, share * quantity, 0, wording, basis);
  }

  /** Hours of a role. */
  static Need work(Item item, LabourRole role, double seconds, String basis, Object... values) {
    Wording wording = Wording.of(item.code(), values);
    return new Need(item, Optional.of(role), seconds, 0, 0, wording, basis);
  }

  /** Whether there is anything of it, up to the last digits of a sum. */
  boolean isAny() {
    return quantity + waste + reserve > 1e-9;
  }
}
