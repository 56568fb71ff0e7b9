package dev.fillplane.pour;

import java.util.Arrays;

/**
 * The pour as a run of events: whenever somebody gets free, the most urgent work that can be done
 * is taken, by who did the same before if possible. Nobody leaves work half done. The same floor,
 * times and way give the same run; nothing is random.
 *
 * <p>Exact for the times given. An event is the moment at which a person has done a piece of work,
 * or at which a break ends; with a handful of people the next one is found by looking at each.
 */
final class CrewRun implements BatchTimes {

  private static final Role[] ROLES = Role.values();
  private static final Stage[] STAGES = Stage.values();

  private final PourSite site;
  private final int people;
  private final Role[] role;
  private final boolean[] working;
  private final boolean[] returning;
  private final int[] batch;
  private final double[] until;
  private final double[] busy;
  private final double[] waiting;
  private double end;

  private CrewRun(PourSite site, int people) {
    this.site = site;
    this.people = people;
    role = new Role[people];
    working = new boolean[people];
    returning = new boolean[people];
    batch = new int[people];
    until = new double[people];
    busy = new double[people * ROLES.length];
    waiting = new double[people * STAGES.length];
  }

  static CrewRun of(LaidFloor floor, TaskTimes times, Way way, Crew crew) {
    CrewRun run = new CrewRun(new PourSite(floor, times, way, crew), way.people());
    run.run();
    return run;
  }

  private void run() {
    double now = 0;
    while (!site.done()) {
      begin(now);
      double next = Math.min(nextDone(), site.nextOpening(now));
      if (next == Double.POSITIVE_INFINITY) {
        throw new IllegalStateException("nobody has anything to do");
      }
      waitUntil(next, now);
      now = next;
      finish(now);
    }
    end = now;
  }

  /** Gives work to all who are free, as long as there is any. */
  private void begin(double now) {
    int free = free();
    while (free > 0) {
      Role next = site.mostUrgent(now);
      if (next == null) {
        return;
      }
      int person = whoTakes(next);
      role[person] = next;
      working[person] = true;
      batch[person] = site.begin(next, now);
      occupy(person, now, site.duration(next, batch[person]));
      free--;
    }
  }

  private int free() {
    int free = people;
    for (boolean works : working) {
      free -= works ? 1 : 0;
    }
    return free;
  }

  /** Of those who are free who did it before, else the first who does not mix, else the first. */
  private int whoTakes(Role next) {
    int first = -1;
    int hand = -1;
    for (int person = people - 1; person >= 0; person--) {
      if (!working[person]) {
        if (role[person] == next) {
          return person;
        }
        first = person;
        hand = role[person] == Role.MIX ? hand : person;
      }
    }
    return hand >= 0 ? hand : first;
  }

  private void occupy(int person, double now, double duration) {
    until[person] = now + duration;
    busy[person * ROLES.length + role[person].ordinal()] += duration;
  }

  private double nextDone() {
    double next = Double.POSITIVE_INFINITY;
    for (int person = 0; person < people; person++) {
      if (working[person] && until[person] < next) {
        next = until[person];
      }
    }
    return next;
  }

  private void finish(double now) {
    for (int person = 0; person < people; person++) {
      if (working[person] && until[person] <= now) {
        if (role[person] == Role.CARRY_AND_POUR && !returning[person]) {
          site.isPoured(batch[person], now);
          returning[person] = true;
          occupy(person, now, site.wayBack());
        } else {
          site.finish(role[person], batch[person], now);
          working[person] = false;
          returning[person] = false;
        }
      }
    }
  }

  private void waitUntil(double next, double now) {
    if (next > now && !site.allPlaced()) {
      for (int person = 0; person < people; person++) {
        if (!working[person]) {
          waiting[person * STAGES.length + site.lacks(now).ordinal()] += next - now;
        }
      }
    }
  }

  int people() {
    return people;
  }

  /** Time that a person worked. */
  double busy(int person, Role what) {
    return busy[person * ROLES.length + what.ordinal()];
  }

  /** Time that a person had nothing to do before the last batch was placed. */
  double waiting(int person) {
    return Arrays.stream(waiting, person * STAGES.length, (person + 1) * STAGES.length).sum();
  }

  /** What a person waited for longest; the first if none. */
  Stage waitedFor(int person) {
    Stage longest = STAGES[0];
    for (Stage stage : STAGES) {
      longest = waiting(person, stage) > waiting(person, longest) ? stage : longest;
    }
    return longest;
  }

  private double waiting(int person, Stage stage) {
    return waiting[person * STAGES.length + stage.ordinal()];
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
