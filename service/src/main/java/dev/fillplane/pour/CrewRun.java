package dev.fillplane.pour;

import dev.fillplane.finding.Stopped;

/**
 * The pour as a run of events: whenever somebody gets free, the most urgent work that can be done
 * is taken, by who did the same before if possible. Nobody leaves work half done. The same floor,
 * times and way give the same run; nothing is random.
 *
 * <p>Exact for the times given. An event is the moment at which a person has done a piece of work,
 * or at which a break ends; with a handful of people the next one is found by looking at each.
 */
final class CrewRun implements BatchTimes {

  private final PourSite site;
  private final People people;
  private final boolean[] returning;
  private final double limit;
  private double oldest;
  private double end;

  private CrewRun(PourSite site, int people, Diary diary, double limit) {
    this.site = site;
    this.limit = limit;
    this.people = new People(people, diary);
    returning = new boolean[people];
  }

  static CrewRun of(LaidFloor floor, TaskTimes times, Way way, Crew crew) {
    return of(floor, times, way, crew, Diary.NONE);
  }

  /** The same run, with a diary of who does what when. */
  static CrewRun of(LaidFloor floor, TaskTimes times, Way way, Crew crew, Diary diary) {
    return of(floor, times, way, crew, diary, Double.POSITIVE_INFINITY);
  }

  /** The same run, left as soon as an edge or a batch is older than {@code limit}. */
  static CrewRun upTo(double limit, LaidFloor floor, TaskTimes times, Way way, Crew crew) {
    return of(floor, times, way, crew, Diary.NONE, limit);
  }

  private static CrewRun of(
      LaidFloor floor, TaskTimes times, Way way, Crew crew, Diary diary, double limit) {
    PourSite site = new PourSite(floor, times, way, crew);
    CrewRun run = new CrewRun(site, way.people(), diary, limit);
    run.run();
    return run;
  }

  private void run() {
    double now = 0;
    while (!site.done() && !isLeft()) {
      Stopped.ifInterrupted();
      begin(now);
      double next = Math.min(people.nextDone(), site.nextOpening(now));
      if (next == Double.POSITIVE_INFINITY) {
        throw new IllegalStateException("nobody has anything to do");
      }
      if (people.anyFree() && !site.allPlaced()) {
        people.wait(site.lacks(now), now, next);
      }
      now = next;
      finish(now);
    }
    end = now;
  }

  /** Gives work to all who are free, as long as there is any. */
  private void begin(double now) {
    while (people.anyFree()) {
      Role next = site.mostUrgent(now);
      if (next == null) {
        return;
      }
      int person = people.whoTakes(next);
      int batch = site.begin(next, now);
      people.begin(person, next, batch);
      people.work(person, now, site.duration(next, batch));
    }
  }

  private void finish(double now) {
    for (int person = 0; person < people.count(); person++) {
      if (people.isDone(person, now)) {
        finish(person, now);
      }
    }
  }

  /** Who has poured a bucket goes back with it. */
  private void finish(int person, double now) {
    Role role = people.role(person);
    int batch = people.batch(person);
    if (role == Role.CARRY_AND_POUR && !returning[person]) {
      oldest = Math.max(oldest, site.isPoured(batch, now));
      returning[person] = true;
      people.work(person, now, site.wayBack());
      return;
    }
    site.finish(role, batch, now);
    returning[person] = false;
    people.rest(person);
  }

  /** Whether it was left before all was done. */
  boolean isLeft() {
    return oldest > limit;
  }

  /** Age of the oldest edge or batch that was placed. */
  double oldest() {
    return oldest;
  }

  /** Those who worked, and what they did. */
  People people() {
    return people;
  }

  double mixStart(int batch) {
    return site.mixStart(batch);
  }

  double ready(int batch) {
    return site.ready(batch);
  }

  /** When all is rolled and washed. */
  double end() {
    return end;
  }

  @Override
  public double firstWater(int batch) {
    return site.firstWater(batch);
  }

  @Override
  public double placed(int batch) {
    return site.placed(batch);
  }

  @Override
  public double rolled(int batch) {
    return site.rolled(batch);
  }
}
