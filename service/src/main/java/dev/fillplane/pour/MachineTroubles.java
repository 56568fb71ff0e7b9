package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import java.util.List;

/**
 * What to do when nothing turns any more.
 *
 * @param table the batches, at least one
 * @param site what is at hand
 * @param standstill how long mixing may stand still
 * @param holdsWithOneMixerLess whether the pour does
 */
record MachineTroubles(
    BatchTable table, TroubleSite site, Amount standstill, boolean holdsWithOneMixerLess) {

  List<Trouble> all() {
    return List.of(site.crew().pumps() ? pump() : drill(), power());
  }

  private Trouble pump() {
    int bags = table.wetAtOnce();
    Remark now =
        Remark.of("pump-stops", "minutes", standstill, "bags", bags, "working", site.workingTime());
    return new Trouble(Mishap.PUMP_STOPS, bags, now, site.goOnNextDay());
  }

  private Trouble drill() {
    int bags = site.crew().bagsPerBatch();
    return new Trouble(Mishap.DRILL_DIES, bags, drill(bags), site.goOnNextDay());
  }

  private Remark drill(int bags) {
    int mixers = site.crew().mixers();
    int left = mixers - 1;
    if (left == 0) {
      return Remark.of("only-drill-dies", "minutes", standstill, "bags", bags);
    }
    return holdsWithOneMixerLess
        ? Remark.of("other-drills-hold", "mixers", mixers, "left", left, "bags", bags)
        : Remark.of(
            "other-drills-fall-behind",
            "mixers",
            mixers,
            "left",
            left,
            "minutes",
            standstill,
            "bags",
            bags);
  }

  private Trouble power() {
    int bags = table.wetAtOnce();
    Remark now = Remark.of("power-goes-off", "minutes", standstill, "bags", bags);
    return new Trouble(Mishap.POWER_OFF, bags, now, site.goOnNextDay());
  }
}
