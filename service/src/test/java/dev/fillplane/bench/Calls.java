package dev.fillplane.bench;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** How long calls took, in milliseconds, and how they ended. */
final class Calls {

  private final Map<Integer, Integer> statuses = new TreeMap<>();
  private double[] millis = new double[1_024];
  private int count;
  private long bytes;
  private double seconds;

  /** Adds a call; only one that was answered with 200 counts among the times. */
  void add(Wire.Answer answer, double took) {
    statuses.merge(answer.status(), 1, Integer::sum);
    if (answer.status() == 200) {
      if (count == millis.length) {
        millis = Arrays.copyOf(millis, 2 * count);
      }
      millis[count++] = took;
      bytes = answer.bytes();
    }
  }

  /** Adds the calls of another caller. */
  void add(Calls other) {
    other.statuses.forEach((status, times) -> statuses.merge(status, times, Integer::sum));
    int sum = count + other.count;
    millis = Arrays.copyOf(millis, Math.max(sum, 1));
    System.arraycopy(other.millis, 0, millis, count, other.count);
    count = sum;
    bytes = Math.max(bytes, other.bytes);
  }

  /** Notes how long all took together. */
  Calls took(double told) {
    seconds = told;
    return this;
  }

  /** All calls, however they ended. */
  int all() {
    return statuses.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Calls answered with 200. */
  int count() {
    return count;
  }

  /** How many ended with which status. */
  Map<Integer, Integer> statuses() {
    return statuses;
  }

  /** Length of an answer. */
  long bytes() {
    return bytes;
  }

  /** Calls answered with 200, each second. */
  double perSecond() {
    return seconds > 0 ? count / seconds : 0;
  }

  /** The time that a share of the calls stays under. */
  double quantile(double share) {
    double[] sorted = Arrays.copyOf(millis, count);
    Arrays.sort(sorted);
    return count == 0 ? Double.NaN : sorted[Math.min(count - 1, (int) (share * count))];
  }
}
