package dev.fillplane.web;

import dev.fillplane.finding.Stopped;
import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/**
 * A piece of heavy work. Over its deadline it is answered at once and its thread interrupted; its
 * place is free when it has really ended. The mark of the interruption never reaches the next
 * piece: a task waits for an interruption under way before it ends, and the pool clears the mark.
 */
final class Piece<T> extends FutureTask<T> {

  private final CompletableFuture<T> result = new CompletableFuture<>();
  private final Duration deadline;
  private final ScheduledExecutorService watch;
  private final Runnable left;
  private final AtomicBoolean taken = new AtomicBoolean();
  private volatile boolean overdue;

  private Piece(
      Supplier<T> work, Duration deadline, ScheduledExecutorService watch, Runnable left) {
    super(
        () -> {
          try {
            return work.get();
          } finally {
            left.run();
          }
        });
    this.deadline = deadline;
    this.watch = watch;
    this.left = left;
  }

  /** Calls {@code left} once, before its result is there or when it is given up. */
  static <T> Piece<T> of(
      Supplier<T> work, Duration deadline, ScheduledExecutorService watch, Runnable left) {
    AtomicBoolean gone = new AtomicBoolean();
    Runnable once =
        () -> {
          if (gone.compareAndSet(false, true)) {
            left.run();
          }
        };
    return new Piece<>(work, deadline, watch, once);
  }

  /**
   * The result, or why there is none: what the work threw, a {@link Refusal} over the deadline, a
   * {@link CancellationException} where it was stopped.
   */
  CompletableFuture<T> result() {
    return result;
  }

  /** Gives it up for a reason, unless it has begun; whether it did. */
  boolean giveUp(RuntimeException why) {
    if (!taken.compareAndSet(false, true)) {
      return false;
    }
    left.run();
    result.completeExceptionally(why);
    return true;
  }

  @Override
  public void run() {
    if (taken.compareAndSet(false, true)) {
      Future<?> alarm =
          watch.schedule(this::overDeadline, deadline.toNanos(), TimeUnit.NANOSECONDS);
      super.run();
      alarm.cancel(false);
      left.run();
    }
  }

  private void overDeadline() {
    overdue = true;
    cancel(true);
  }

  private RuntimeException why() {
    if (!overdue) {
      return new CancellationException("stopped from outside");
    }
    return Refusal.of(
        Problem.Kind.OVER_DEADLINE,
        "The calculation was stopped after "
            + deadline.toSeconds()
            + " s. Make it smaller: larger cells of the grid, fewer readings, rooms or variations"
            + " in one request.");
  }

  @Override
  protected void done() {
    try {
      result.complete(get());
    } catch (CancellationException e) {
      result.completeExceptionally(why());
    } catch (ExecutionException e) {
      result.completeExceptionally(e.getCause() instanceof Stopped ? why() : e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException("a task that is done has its result", e);
    }
  }
}
