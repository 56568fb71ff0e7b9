package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.finding.Remark;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * Says what to do when a pour goes wrong, with the numbers of its plan: how long all may stand
 * still, where to end, how many bags are at stake, what to do the day after. Only what this job has
 * can go wrong: there is no leak without a dam, and no drill beside a pump. What to do is common
 * practice, no source: end at a door or against a board, at full depth, never run out thin, and
 * prime again before going on.
 */
public final class TroublePlanner {

  private final BayPlan bays;
  private final DataSheet sheet;
  private final Pour pour;
  private final BatchTable table;
  private final TroubleSite site;
  private final double standstill;

  private TroublePlanner(BayPlan bays, DataSheet sheet, Pour pour, TroubleSite site) {
    this.bays = bays;
    this.sheet = sheet;
    this.pour = pour;
    this.site = site;
    table = new BatchTable(pour);
    double oldest = table.meetsOldestEdge().map(b -> b.edgeAge().getAsDouble()).orElse(0.0);
    standstill = Math.max(0, site.mix().healingTime() - oldest);
  }

  /**
   * The troubles of a pour; none where nothing is poured.
   *
   * @param bays the bays of the pour
   * @param sheet the underlayment
   * @param pour as planned
   * @param site what is at hand
   */
  public static Troubles plan(BayPlan bays, DataSheet sheet, Pour pour, TroubleSite site) {
    if (pour.batches().isEmpty()) {
      return new Troubles(0, List.of(), List.of());
    }
    TroublePlanner planner = new TroublePlanner(bays, sheet, pour, site);
    return new Troubles(planner.standstill, planner.table.stops(), planner.cases());
  }

  private List<Trouble> cases() {
    List<Trouble> cases = new ArrayList<>();
    cases.add(site.crew().pumps() ? pump() : drill());
    cases.add(power());
    if (site.dams() > 0) {
      cases.add(leak());
    }
    cases.add(clump());
    if (pour.batches().size() > 1) {
      cases.add(bags());
    }
    table.meetsOldestEdge().map(this::edge).ifPresent(cases::add);
    return cases;
  }

  private Trouble pump() {
    int bags = table.wetAtOnce();
    Remark now =
        Remark.of(
            "pump-stops", "minutes", time(standstill), "bags", bags, "working", workingTime());
    return new Trouble(Mishap.PUMP_STOPS, bags, now, goOn());
  }

  private Trouble drill() {
    int bags = site.crew().bagsPerBatch();
    int mixers = site.crew().mixers();
    Remark now;
    if (mixers == 1) {
      now = Remark.of("only-drill-dies", "minutes", time(standstill), "bags", bags);
    } else if (holdsWithOneMixerLess()) {
      now = Remark.of("other-drills-hold", "mixers", mixers, "left", mixers - 1, "bags", bags);
    } else {
      now =
          Remark.of(
              "other-drills-fall-behind",
              "mixers",
              mixers,
              "left",
              mixers - 1,
              "minutes",
              time(standstill),
              "bags",
              bags);
    }
    return new Trouble(Mishap.DRILL_DIES, bags, now, goOn());
  }

  /** Never where the pour as planned does not; reckoned as if the drill were missing all day. */
  private boolean holdsWithOneMixerLess() {
    Crew crew = site.crew();
    Crew fewer = crew.with(crew.people(), crew.mixers() - 1, crew.barrels(), crew.bagsPerBatch());
    double age = new Rehearsals(bays, sheet).age(fewer);
    return pour.verdict() == Verdict.HOLDS
        && FloorPour.verdict(age, site.mix().healingTime()) == Verdict.HOLDS;
  }

  private Trouble power() {
    int bags = table.wetAtOnce();
    Remark now = Remark.of("power-goes-off", "minutes", time(standstill), "bags", bags);
    return new Trouble(Mishap.POWER_OFF, bags, now, goOn());
  }

  private Trouble leak() {
    int bags = table.bagsOfLargestBay();
    Remark now =
        Remark.of(
            "dam-leaks",
            "dams",
            site.dams(),
            "working",
            workingTime(),
            "bags",
            bags,
            "healing",
            healingTime());
    return new Trouble(Mishap.LEAK, bags, now, Remark.of("after-a-leak"));
  }

  private Trouble clump() {
    int bags = site.crew().bagsPerBatch();
    Remark now = Remark.of("lumps-in-the-mix", "bags", bags, "healing", healingTime());
    return new Trouble(Mishap.CLUMP, bags, now, Remark.of("after-a-clump"));
  }

  /** Counted where the last bay begins, or half way where there is one only. */
  private Trouble bags() {
    List<StopPlace> stops = table.stops();
    int all = pour.batches().size();
    int counted = stops.isEmpty() ? all / 2 : firstOfLastBay();
    Batch before = pour.batches().get(counted - 1);
    int left = table.bags(counted, all);
    Remark now =
        Remark.of(
            stops.isEmpty() ? "count-bags-half-way" : "count-bags-before-last-bay",
            "planned",
            table.bags(0, all),
            "order",
            site.bags(),
            "before",
            before.bay(),
            "ribbon",
            before.lastRibbon(),
            "placed",
            time(before.placed()),
            "left",
            left,
            "minutes",
            time(standstill));
    return new Trouble(Mishap.BAGS_SHORT, left, now, goOn());
  }

  private int firstOfLastBay() {
    int first = 0;
    while (table.endOfBay(first) < pour.batches().size()) {
      first = table.endOfBay(first);
    }
    return first;
  }

  private Trouble edge(Batch meets) {
    int index = pour.batches().indexOf(meets);
    int bags = table.bags(index, table.endOfBay(index));
    double latest = meets.placed() - meets.edgeAge().getAsDouble() + site.mix().healingTime();
    Remark now =
        Remark.of(
            latest < meets.placed() ? "edge-is-lost-as-planned" : "edge-waits-longest",
            "batch",
            meets.number(),
            "bay",
            meets.bay(),
            "ribbon",
            meets.firstRibbon(),
            "placed",
            time(meets.placed()),
            "latest",
            time(latest),
            "depth",
            Amount.of(table.ribbon(meets.firstRibbon()).meanDepth(), Dimension.HEIGHT),
            "bags",
            bags);
    return new Trouble(Mishap.EDGE_LOST, bags, now, goOn());
  }

  private Remark goOn() {
    return Remark.of("go-on-next-day", "hours", (int) Math.ceil(site.walkOn() / 3600));
  }

  private Amount workingTime() {
    return time(site.mix().workingTime());
  }

  private Amount healingTime() {
    return time(site.mix().healingTime());
  }

  private static Amount time(double seconds) {
    return Amount.of(seconds, Dimension.TIME);
  }
}
