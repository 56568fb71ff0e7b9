package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * What to do when the mix, its bags or its edges give trouble.
 *
 * @param table the batches, at least one
 * @param site what is at hand
 * @param standstill how long mixing may stand still
 */
record FloorTroubles(BatchTable table, TroubleSite site, Amount standstill) {

  List<Trouble> all() {
    List<Trouble> all = new ArrayList<>();
    if (dams() > 0) {
      all.add(leak());
    }
    all.add(clump());
    if (table.batches().size() > 1) {
      all.add(bagsShort());
    }
    table.meetsOldestEdge().map(this::edge).ifPresent(all::add);
    return all;
  }

  /** At the openings, and in the rooms. */
  private int dams() {
    long inRooms =
        table.pour().joints().stream().filter(joint -> joint.opening().isEmpty()).count();
    return site.dams() + (int) inRooms;
  }

  private Trouble leak() {
    int bags = table.bagsOfLargestBay();
    Remark now =
        Remark.of(
            "dam-leaks",
            "dams",
            dams(),
            "working",
            site.workingTime(),
            "bags",
            bags,
            "healing",
            site.healingTime());
    return new Trouble(Mishap.LEAK, bags, now, Remark.of("after-a-leak"));
  }

  private Trouble clump() {
    int bags = site.crew().bagsPerBatch();
    Remark now = Remark.of("lumps-in-the-mix", "bags", bags, "healing", site.healingTime());
    return new Trouble(Mishap.CLUMP, bags, now, Remark.of("after-a-clump"));
  }

  /** Counted where the last bay begins, or half way where there is one only. */
  private Trouble bagsShort() {
    int all = table.batches().size();
    int begin = table.beginOfLastBay();
    Batch before = table.batches().get((begin == 0 ? all / 2 : begin) - 1);
    int left = table.bags(begin == 0 ? all / 2 : begin, all);
    Remark now =
        Remark.of(
            begin == 0 ? "count-bags-half-way" : "count-bags-before-last-bay",
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
            standstill);
    return new Trouble(Mishap.BAGS_SHORT, left, now, site.goOnNextDay());
  }

  private Trouble edge(Batch meets) {
    int index = table.batches().indexOf(meets);
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
    return new Trouble(Mishap.EDGE_LOST, bags, now, site.goOnNextDay());
  }

  private static Amount time(double seconds) {
    return Amount.of(seconds, Dimension.TIME);
  }
}
