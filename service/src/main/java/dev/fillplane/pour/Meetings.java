package dev.fillplane.pour;

import dev.fillplane.bay.Front;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Where batches meet the edges of batches, point by point: along a front both strips are steps of
 * batches, so the same two meet between their seams; the joins between the batches of a strip count
 * too. Batches and ribbons count from 0 over the whole floor.
 */
final class Meetings {

  /** Bits of a front that are shorter close anyway, and may stem from rounding. */
  private static final double SHORT = 0.01;

  private record Meeting(int ribbon, int made, int met) {}

  private final int[] ribbon;
  private final int[] made;
  private final int[] met;
  private final int ribbons;

  private Meetings(Set<Meeting> all, int ribbons) {
    ribbon = all.stream().mapToInt(Meeting::ribbon).toArray();
    made = all.stream().mapToInt(Meeting::made).toArray();
    met = all.stream().mapToInt(Meeting::met).toArray();
    this.ribbons = ribbons;
  }

  static Meetings of(List<LaidBay> bays) {
    Set<Meeting> all = new LinkedHashSet<>();
    int ribbons = 0;
    for (LaidBay bay : bays) {
      for (LaidStrip strip : bay.strips()) {
        addJoins(bay, strip, ribbons, all);
        for (Front front : strip.strip().fronts()) {
          addFront(bay, strip, front, ribbons, all);
        }
        ribbons++;
      }
    }
    return new Meetings(all, ribbons);
  }

  private static void addJoins(LaidBay bay, LaidStrip strip, int ribbon, Set<Meeting> all) {
    for (int next = strip.first() + 1; next < strip.first() + strip.count(); next++) {
      all.add(new Meeting(ribbon, bay.firstBatch() + next - 1, bay.firstBatch() + next));
    }
  }

  private static void addFront(
      LaidBay bay, LaidStrip strip, Front front, int ribbon, Set<Meeting> all) {
    LaidStrip later = bay.strips().get(front.later() - 1);
    if (!strip.poured() || !later.poured()) {
      return;
    }
    List<Double> ends = ends(strip, later, front);
    for (int i = 1; i < ends.size(); i++) {
      double from = ends.get(i - 1);
      double to = ends.get(i);
      if (to - from > Math.min(SHORT, front.length() / 4)) {
        int made = strip.batchAt((from + to) / 2);
        int met = later.batchAt((from + to) / 2);
        all.add(new Meeting(ribbon, bay.firstBatch() + made, bay.firstBatch() + met));
      }
    }
  }

  private static List<Double> ends(LaidStrip strip, LaidStrip later, Front front) {
    List<Double> ends = new ArrayList<>(List.of(front.from(), front.to()));
    ends.addAll(strip.seams());
    ends.addAll(later.seams());
    ends.removeIf(end -> end < front.from() || end > front.to());
    ends.sort(null);
    return ends;
  }

  /** Of the meetings with edges older than {@code age} that whose edge gets so old first; or -1. */
  int firstOlder(double age, BatchTimes times) {
    int first = -1;
    for (int i = 0; i < made.length; i++) {
      boolean sooner = first < 0 || times.firstWater(made[i]) < times.firstWater(made[first]);
      if (age(i, times) > age && sooner) {
        first = i;
      }
    }
    return first;
  }

  int ribbon(int meeting) {
    return ribbon[meeting];
  }

  int made(int meeting) {
    return made[meeting];
  }

  int met(int meeting) {
    return met[meeting];
  }

  /** Age of the oldest edge of all when it is met; 0 where nothing meets. */
  double oldest(BatchTimes times) {
    double oldest = 0;
    for (int i = 0; i < made.length; i++) {
      oldest = Math.max(oldest, age(i, times));
    }
    return oldest;
  }

  /** Age of the oldest edge of each ribbon when it is met; 0 where nothing meets it. */
  double[] ofRibbons(BatchTimes times) {
    double[] oldest = new double[ribbons];
    for (int i = 0; i < made.length; i++) {
      oldest[ribbon[i]] = Math.max(oldest[ribbon[i]], age(i, times));
    }
    return oldest;
  }

  /** Age of the oldest edge that each of the batches meets; 0 where it meets none. */
  double[] metBy(int batches, BatchTimes times) {
    double[] oldest = new double[batches];
    for (int i = 0; i < made.length; i++) {
      oldest[met[i]] = Math.max(oldest[met[i]], age(i, times));
    }
    return oldest;
  }

  /** For each of the batches the first whose edge it meets; itself if it meets none before it. */
  int[] oldestMet(int batches) {
    int[] oldest = new int[batches];
    Arrays.setAll(oldest, batch -> batch);
    for (int i = 0; i < made.length; i++) {
      oldest[met[i]] = Math.min(oldest[met[i]], made[i]);
    }
    return oldest;
  }

  private double age(int meeting, BatchTimes times) {
    return times.placed(met[meeting]) - times.firstWater(made[meeting]);
  }
}
