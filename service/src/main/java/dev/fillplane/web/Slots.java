package dev.fillplane.web;

import java.util.Map;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Lets only so many calculations run at once; the others wait a while and are then sent away. */
final class Slots {

  private final Semaphore free;
  private final long patienceSeconds;

  /** {@code count} places; who gets none within the patience is refused. */
  Slots(int count, long patienceSeconds) {
    this.free = new Semaphore(count, true);
    this.patienceSeconds = patienceSeconds;
  }

  /**
   * Runs {@code work} in a place of its own.
   *
   * @throws Refusal if none comes free in time
   */
  <T> T run(Supplier<T> work) {
    try {
      if (!free.tryAcquire(patienceSeconds, TimeUnit.SECONDS)) {
        throw busy();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw busy();
    }
    return inPlace(work);
  }

  /**
   * The same for work that can wait for its place as long as it takes.
   *
   * @throws Refusal if the waiting is interrupted
   */
  <T> T runWhenFree(Supplier<T> work) {
    try {
      free.acquire();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw busy();
    }
    return inPlace(work);
  }

  private <T> T inPlace(Supplier<T> work) {
    try {
      return work.get();
    } finally {
      free.release();
    }
  }

  private static Refusal busy() {
    Problem problem =
        Problem.of(
            Problem.Kind.BUSY, "Every place for a calculation is taken; try again in a moment.");
    return new Refusal(problem, Map.of("Retry-After", "2"));
  }
}
