package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.finding.Remark;
import dev.fillplane.material.DataSheet;
import java.util.function.Supplier;

/**
 * The same floor poured by the same crew in another way, such as with cooler water.
 *
 * @param effort what it asks for
 * @param remark what is done
 * @param withCrew code of the same together with a larger crew
 * @param bays the bays as they are then cut; made only if the way is tried
 * @param sheet the underlayment
 * @param healing how long edges heal then
 */
public record OtherPour(
    Effort effort,
    Remark remark,
    String withCrew,
    Supplier<BayPlan> bays,
    DataSheet sheet,
    Healing healing) {

  /** The same on a site where edges were found to heal so many times as long as by the sheet. */
  public OtherPour found(double factor) {
    return new OtherPour(
        effort, remark, withCrew, bays, sheet, Healing.of(factor * healing.time()));
  }
}
