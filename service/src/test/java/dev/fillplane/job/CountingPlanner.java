package dev.fillplane.job;

import dev.fillplane.estimate.UnitNeed;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;

/**
 * Plans at once, or when it is let; counts how often each body came. A body that begins with {@code
 * bad} has no plan.
 */
final class CountingPlanner implements UnitPlanner {

  private final Map<String, Integer> seen = new ConcurrentHashMap<>();
  private final Semaphore begun = new Semaphore(0);
  private final Semaphore let = new Semaphore(0);
  private final boolean waits;

  private CountingPlanner(boolean waits) {
    this.waits = waits;
  }

  static CountingPlanner free() {
    return new CountingPlanner(false);
  }

  /** Plans only as many units as {@link #let} says. */
  static CountingPlanner held() {
    return new CountingPlanner(true);
  }

  @Override
  public UnitAnswer plan(byte[] body) {
    String text = new String(body, StandardCharsets.UTF_8);
    seen.merge(text, 1, Integer::sum);
    begun.release();
    if (waits) {
      let.acquireUninterruptibly();
    }
    byte[] json = ("plan of " + text).getBytes(StandardCharsets.UTF_8);
    return text.startsWith("bad")
        ? new UnitAnswer(json, Optional.empty())
        : new UnitAnswer(json, Optional.of(need()));
  }

  private static UnitNeed need() {
    return new UnitNeed("sheet", Optional.of("a"), 25, 0.005, 0.001, 0.9, 3, new double[] {2, 3});
  }

  void let(int units) {
    let.release(units);
  }

  /** Waits until so many units have begun since the last time. */
  void awaitBegun(int units) {
    begun.acquireUninterruptibly(units);
  }

  Map<String, Integer> seen() {
    return seen;
  }
}
