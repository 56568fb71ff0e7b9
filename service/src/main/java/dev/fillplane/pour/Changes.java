package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Split;
import dev.fillplane.bay.SplitCandidates;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Searches what would make a pour hold, the least change first: barrels filled ahead, what can be
 * done on site, more hands and mixers, larger batches, a dam, then what takes another material or
 * day.
 */
final class Changes {

  private static final int MOST = 3;

  private record Tried(Remark remark, FloorPour pour) {

    Change change() {
      return new Change(remark, pour.verdict());
    }
  }

  private final Rehearsals rehearsals;
  private final FloorPour now;
  private final Map<OtherPour, Rehearsals> elsewhere = new IdentityHashMap<>();
  private final List<Change> holding = new ArrayList<>();
  private Optional<Tried> mostHelpful = Optional.empty();

  private Changes(Rehearsals rehearsals, FloorPour now) {
    this.rehearsals = rehearsals;
    this.now = now;
  }

  /**
   * Up to three changes with which the pour holds, each of another kind; if none does, the one that
   * helps most, if any helps.
   *
   * @param others what can be done but for the crew, the least of each effort first
   */
  static List<Change> of(Rehearsals rehearsals, FloorPour now, List<OtherPour> others) {
    if (now.holds()) {
      return List.of();
    }
    Changes changes = new Changes(rehearsals, now);
    changes.search(others);
    return changes.found();
  }

  private List<Change> found() {
    if (!holding.isEmpty() || now.inTime()) {
      return holding;
    }
    return mostHelpful.map(Tried::change).map(List::of).orElse(List.of());
  }

  private void search(List<OtherPour> others) {
    List<CrewChange> larger = CrewChange.of(now.crew());
    larger.stream().filter(CrewChange::isSmall).forEach(this::tryCrew);
    tryOthers(others, Effort.SMALL);
    larger.stream().filter(change -> !change.isSmall()).forEach(this::tryCrew);
    tryDams();
    tryOthers(others, Effort.LARGE);
    if (holding.isEmpty()) {
      others.forEach(other -> tryTogether(other, larger));
    }
  }

  private void tryOthers(List<OtherPour> others, Effort effort) {
    for (OtherPour other : others) {
      if (other.effort() == effort) {
        tryIt(other.remark(), () -> pour(other, now.crew()));
      }
    }
  }

  private FloorPour pour(OtherPour other, Crew crew) {
    return elsewhere(other).best(crew, other.healing());
  }

  private Rehearsals elsewhere(OtherPour other) {
    return elsewhere.computeIfAbsent(
        other, key -> rehearsals.on(other.bays().get(), other.sheet()));
  }

  /** Where no change is enough on its own. */
  private void tryTogether(OtherPour other, List<CrewChange> larger) {
    for (CrewChange change : larger) {
      tryIt(change.with(other), () -> pour(other, change.crew()));
    }
  }

  private void tryCrew(CrewChange change) {
    tryIt(change.remark(), () -> rehearsals.best(change.crew(), now.healing()));
  }

  /** Dams in the bay with the oldest edge, the shortest first. */
  private void tryDams() {
    if (now.ages().edge() < now.ages().deciding() || batchesInARowMeetTooLate()) {
      return; // no dam makes a batch younger, or the next one come sooner
    }
    Bay bay = OldestEdge.of(now).bay().bay();
    for (Split dam : SplitCandidates.of(bay)) {
      tryIt(dam(bay, dam), () -> pour(rehearsals.plan().split(bay, dam)));
    }
  }

  private boolean batchesInARowMeetTooLate() {
    double soonest = Double.POSITIVE_INFINITY;
    for (int i = 1; i < now.floor().batches(); i++) {
      soonest = Math.min(soonest, now.run().placed(i) - now.run().firstWater(i - 1));
    }
    return soonest > now.healing().limit();
  }

  private FloorPour pour(BayPlan divided) {
    return rehearsals.on(divided, rehearsals.sheet()).best(now.crew(), now.healing());
  }

  private static Remark dam(Bay bay, Split dam) {
    return Remark.of(
        "dam",
        "bay",
        bay.id(),
        "length",
        plan(dam.length()),
        "fromX",
        plan(dam.from().x()),
        "fromY",
        plan(dam.from().y()),
        "toX",
        plan(dam.to().x()),
        "toY",
        plan(dam.to().y()));
  }

  private static Amount plan(double metres) {
    return Amount.of(metres, Dimension.PLAN);
  }

  /** Nothing is tried once there are three, and no kind of change again that holds already. */
  private void tryIt(Remark remark, Supplier<FloorPour> pour) {
    boolean known =
        holding.stream().anyMatch(change -> change.remark().code().equals(remark.code()));
    if (known || holding.size() == MOST) {
      return;
    }
    Tried tried = new Tried(remark, pour.get());
    if (tried.pour().holds()) {
      holding.add(tried.change());
    }
    double least = mostHelpful.map(Tried::pour).orElse(now).strain();
    if (tried.pour().strain() < least) {
      mostHelpful = Optional.of(tried);
    }
  }
}
