package dev.fillplane.pour;

import java.util.Arrays;

/** Those who work: what each does until when, and how long each worked and waited. */
final class People {

  private static final int ROLES = Role.values().length;
  private static final Stage[] STAGES = Stage.values();

  private final Role[] role;
  private final boolean[] working;
  private final int[] batch;
  private final double[] until;
  private final double[] busy;
  private final double[] waiting;
  private final Diary diary;
  private int free;

  People(int count, Diary diary) {
    this.diary = diary;
    role = new Role[count];
    working = new boolean[count];
    batch = new int[count];
    until = new double[count];
    busy = new double[count * ROLES];
    waiting = new double[count * STAGES.length];
    free = count;
  }

  int count() {
    return working.length;
  }

  boolean anyFree() {
    return free > 0;
  }

  /** Of those who are free who did it before, else the first who does not mix, else the first. */
  int whoTakes(Role next) {
    int first = -1;
    int hand = -1;
    for (int person = count() - 1; person >= 0; person--) {
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

  void begin(int person, Role next, int forBatch) {
    role[person] = next;
    batch[person] = forBatch;
    working[person] = true;
    free--;
  }

  void work(int person, double now, double duration) {
    until[person] = now + duration;
    diary.note(person, role[person], batch[person], now, until[person]);
    busy[person * ROLES + role[person].ordinal()] += duration;
  }

  void rest(int person) {
    working[person] = false;
    free++;
  }

  /** Those who are free wait for something until {@code next}. */
  void wait(Stage lacking, double now, double next) {
    for (int person = 0; person < count(); person++) {
      if (!working[person]) {
        waiting[person * STAGES.length + lacking.ordinal()] += next - now;
      }
    }
  }

  boolean isDone(int person, double now) {
    return working[person] && until[person] <= now;
  }

  /** When the next of them is done; infinite if nobody works. */
  double nextDone() {
    double next = Double.POSITIVE_INFINITY;
    for (int person = 0; person < count(); person++) {
      if (working[person] && until[person] < next) {
        next = until[person];
      }
    }
    return next;
  }

  Role role(int person) {
    return role[person];
  }

  int batch(int person) {
    return batch[person];
  }

  double busy(int person, Role what) {
    return busy[person * ROLES + what.ordinal()];
  }

  double waiting(int person) {
    return Arrays.stream(waiting, person * STAGES.length, (person + 1) * STAGES.length).sum();
  }

  /** What a person waited for longest; the first if none. */
  Stage waitedFor(int person) {
    int longest = 0;
    for (int i = 1; i < STAGES.length; i++) {
      int at = person * STAGES.length;
      longest = waiting[at + i] > waiting[at + longest] ? i : longest;
    }
    return STAGES[longest];
  }
}
