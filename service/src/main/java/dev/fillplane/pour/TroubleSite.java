package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import dev.fillplane.heat.Mix;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/**
 * What a pour has at hand when something goes wrong.
 *
 * @param crew who pours
 * @param mix the fresh mix
 * @param bags that are ordered
 * @param dams boards across openings
 * @param walkOn time until people may walk on it
 */
public record TroubleSite(Crew crew, Mix mix, int bags, int dams, double walkOn) {

  Amount workingTime() {
    return Amount.of(mix.workingTime(), Dimension.TIME);
  }

  Amount healingTime() {
    return Amount.of(mix.healingTime(), Dimension.TIME);
  }

  /** What to do the day after a pour ended early; in whole hours. */
  Remark goOnNextDay() {
    return Remark.of("go-on-next-day", "hours", (int) Math.ceil(walkOn / 3600));
  }
}
