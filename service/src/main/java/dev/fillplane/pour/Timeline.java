package dev.fillplane.pour;

import dev.fillplane.material.DataSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** A pour told batch by batch, person by person, and in sum. */
final class Timeline {

  private final FloorPour pour;
  private final CrewRun run;
  private final DataSheet sheet;
  private final Optional<WallClock> clock;

  Timeline(FloorPour pour, DataSheet sheet) {
    this.pour = pour;
    this.run = pour.run();
    this.sheet = sheet;
    clock = pour.crew().start().map(WallClock::new);
  }

  List<Batch> batches() {
    List<Batch> batches = new ArrayList<>();
    double[] met = pour.floor().meetings().metBy(pour.floor().batches(), run);
    for (LaidBay bay : pour.floor().bays()) {
      int[] first = new int[bay.batches()];
      int[] last = new int[bay.batches()];
      findRibbons(bay, first, last);
      for (int i = 0; i < bay.batches(); i++) {
        batches.add(batch(bay, i, first[i], last[i], met[bay.firstBatch() + i]));
      }
    }
    return batches;
  }

  private static void findRibbons(LaidBay bay, int[] first, int[] last) {
    for (int r = 0; r < bay.strips().size(); r++) {
      LaidStrip strip = bay.strips().get(r);
      int end = Math.min(first.length, strip.first() + strip.count());
      for (int i = strip.first(); i < end; i++) {
        int order = bay.firstRibbon() + r + 1;
        first[i] = first[i] == 0 ? order : first[i];
        last[i] = order;
      }
    }
  }

  private Batch batch(LaidBay bay, int inBay, int firstRibbon, int lastRibbon, double edgeAge) {
    int i = bay.firstBatch() + inBay;
    int bags = pour.floor().bags(i);
    return new Batch(
        bay.bay().id(),
        inBay + 1,
        bags,
        bags * sheet.waterPerBag(),
        bay.volume(inBay),
        firstRibbon,
        lastRibbon,
        run.mixStart(i),
        run.firstWater(i),
        run.ready(i),
        run.placed(i),
        run.rolled(i),
        run.placed(i) - run.firstWater(i),
        edgeAge > 0 ? OptionalDouble.of(edgeAge) : OptionalDouble.empty(),
        clock.map(c -> byTheClock(i, c)));
  }

  private BatchClock byTheClock(int batch, WallClock c) {
    return new BatchClock(
        c.after(run.mixStart(batch)), c.after(run.ready(batch)), c.after(run.placed(batch)));
  }

  /** All of the crew; those who stand by come last. */
  List<Worker> workers() {
    TaskList tasks = new TaskList(run.people().count());
    CrewRun.of(pour.floor(), TaskTimes.of(pour.crew(), sheet), pour.way(), pour.crew(), tasks);
    List<Worker> workers = new ArrayList<>();
    for (int person = 0; person < pour.crew().people(); person++) {
      workers.add(
          person < run.people().count()
              ? worker(person, tasks.of(person))
              : new Worker(person + 1, List.of(), 0, pour.duration(), Optional.empty(), List.of()));
    }
    return workers;
  }

  private Worker worker(int person, List<Task> tasks) {
    List<Role> roles =
        Stream.of(Role.values())
            .filter(role -> run.people().busy(person, role) > 0)
            .sorted(Comparator.comparingDouble((Role role) -> -run.people().busy(person, role)))
            .toList();
    double busy = roles.stream().mapToDouble(role -> run.people().busy(person, role)).sum();
    double waiting = run.people().waiting(person);
    Optional<Stage> waitsFor =
        waiting > 0 ? Optional.of(run.people().waitedFor(person)) : Optional.empty();
    return new Worker(person + 1, roles, busy, waiting, waitsFor, tasks);
  }

  PourTotals totals() {
    LaidFloor floor = pour.floor();
    int bags = 0;
    for (int i = 0; i < floor.batches(); i++) {
      bags += floor.bags(i);
    }
    double volume =
        floor.batches() == 0
            ? 0
            : floor.bays().stream().mapToDouble(bay -> bay.bay().fill().volume()).sum();
    return new PourTotals(
        floor.batches(),
        bags,
        bags * sheet.waterPerBag(),
        volume,
        Math.max(0, bags * sheet.yieldPerBag() - volume),
        interval(floor.batches()),
        run.end(),
        clock.map(c -> c.after(run.end())));
  }

  private double interval(int batches) {
    return batches < 2 ? 0 : (run.placed(batches - 1) - run.placed(0)) / (batches - 1);
  }
}
