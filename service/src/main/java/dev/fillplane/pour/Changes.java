package dev.fillplane.pour;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Split;
import dev.fillplane.bay.SplitCandidates;
import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
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
    Crew crew = now.crew();
    if (crew.pumps()) {
      tryOthers(others, Effort.SMALL);
      tryCrew("one-more-person", more(crew, 1, 0));
      tryDams();
      tryOthers(others, Effort.LARGE);
      return;
    }
    if (crew.preFilled() < crew.barrels()) {
      tryCrew("barrels-filled-ahead", crew.allFilled());
    }
    tryOthers(others, Effort.SMALL);
    tryCrew("one-more-person", more(crew, 1, 0));
    tryCrew("one-more-mixer", more(crew, 0, 1));
    tryCrew("one-more-person-and-mixer", more(crew, 1, 1));
    if (crew.bagsPerBatch() == 1 && crew.barrels() >= 2 * crew.mixers()) {
      tryCrew("two-bags-per-batch", twoBags(crew));
    }
    tryDams();
    tryOthers(others, Effort.LARGE);
    tryCrew("two-more-people-and-mixer", more(crew, 2, 1));
  }

  private void tryOthers(List<OtherPour> others, Effort effort) {
    for (OtherPour other : others) {
      if (other.effort() == effort) {
        tryIt(other.remark(), () -> pour(other));
      }
    }
  }

  private FloorPour pour(OtherPour other) {
    Rehearsals elsewhere = rehearsals.on(other.bays().get(), other.sheet());
    return elsewhere.best(now.crew(), other.healing());
  }

  /** Dams in the bay with the oldest edge, the shortest first. */
  private void tryDams() {
    Bay bay = OldestEdge.of(now).bay().bay();
    for (Split dam : SplitCandidates.of(bay)) {
      tryIt(dam(bay, dam), () -> pour(rehearsals.plan().split(bay, dam)));
    }
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

  private void tryCrew(String code, Crew crew) {
    Remark remark =
        Remark.of(
            code,
            "people",
            crew.people(),
            "mixers",
            crew.mixers(),
            "barrels",
            crew.barrels(),
            "bags",
            crew.bagsPerBatch());
    tryIt(remark, () -> rehearsals.best(crew, now.healing()));
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

  private static Crew more(Crew crew, int people, int mixers) {
    return crew.with(
        crew.people() + people,
        crew.mixers() + mixers,
        crew.barrels() + 2 * mixers,
        crew.bagsPerBatch());
  }

  private static Crew twoBags(Crew crew) {
    return crew.with(crew.people(), crew.mixers(), crew.barrels(), 2);
  }
}
