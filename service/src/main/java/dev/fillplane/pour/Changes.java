package dev.fillplane.pour;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Searches what would make a pour hold, the least change first. The ribbons stay as they are. */
final class Changes {

  private static final int MOST = 3;

  private record Tried(Remark remark, FloorPour pour) {

    Change change() {
      return new Change(remark, pour.verdict());
    }
  }

  private final Rehearsals rehearsals;
  private final FloorPour now;

  private Changes(Rehearsals rehearsals, FloorPour now) {
    this.rehearsals = rehearsals;
    this.now = now;
  }

  /**
   * Up to three changes with which the pour holds; if none does, the one that helps most, if any
   * helps.
   */
  static List<Change> of(Rehearsals rehearsals, FloorPour now, Optional<CoolerWater> cooler) {
    if (now.holds()) {
      return List.of();
    }
    List<Tried> tried = new Changes(rehearsals, now).all(cooler);
    List<Change> holding =
        tried.stream().filter(t -> t.pour().holds()).limit(MOST).map(Tried::change).toList();
    return holding.isEmpty() ? mostHelpful(tried, now) : holding;
  }

  private static List<Change> mostHelpful(List<Tried> tried, FloorPour now) {
    double least = now.strain();
    List<Change> best = List.of();
    for (Tried next : tried) {
      if (next.pour().strain() < least) {
        least = next.pour().strain();
        best = List.of(next.change());
      }
    }
    return best;
  }

  private List<Tried> all(Optional<CoolerWater> cooler) {
    Crew crew = now.crew();
    List<Tried> tried = new ArrayList<>();
    cooler.ifPresent(water -> tried.add(with(water)));
    tried.add(with("one-more-person", more(crew, 1, 0)));
    if (crew.pumps()) {
      return tried;
    }
    tried.add(with("one-more-mixer", more(crew, 0, 1)));
    tried.add(with("one-more-person-and-mixer", more(crew, 1, 1)));
    if (crew.bagsPerBatch() == 1 && crew.barrels() >= 2 * crew.mixers()) {
      tried.add(with("two-bags-per-batch", twoBags(crew)));
    }
    tried.add(with("two-more-people-and-mixer", more(crew, 2, 1)));
    return tried;
  }

  private Tried with(CoolerWater water) {
    Remark remark =
        Remark.of(
            "cooler-water", "temperature", Amount.of(water.temperature(), Dimension.TEMPERATURE));
    return new Tried(remark, rehearsals.best(now.crew(), water.healingTime()));
  }

  private Tried with(String code, Crew crew) {
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
    return new Tried(remark, rehearsals.best(crew, now.healingTime()));
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
