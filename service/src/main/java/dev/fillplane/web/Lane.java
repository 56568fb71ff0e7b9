package dev.fillplane.web;

import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * The way of all heavy work: a few places in which it runs on threads of their own, and one queue
 * before them in the order of coming, for requests, lines of streams and units of jobs alike. Who
 * waits for an answer holds no thread meanwhile. Requests wait only where there is room and only
 * for a while; what runs over its deadline is interrupted. Safe to share.
 */
final class Lane implements AutoCloseable {

  private final Capacity capacity;
  private final ThreadPoolExecutor places;
  private final ScheduledExecutorService watch;
  private final Semaphore room;

  Lane(Capacity capacity, ScheduledExecutorService watch) {
    this.capacity = capacity;
    this.watch = watch;
    this.room = new Semaphore(capacity.places() + capacity.waiting());
    this.places =
        new ThreadPoolExecutor(
            capacity.places(),
            capacity.places(),
            1,
            TimeUnit.MINUTES,
            new LinkedBlockingQueue<>(),
            task -> new Thread(task, "heavy"));
  }

  /**
   * Work of a request.
   *
   * @param bytes size of its body, for its deadline
   * @return its result; or a {@link Refusal} if it found no place in time or ran over its deadline
   * @throws Refusal at once if too many wait already
   */
  <T> CompletableFuture<T> submit(long bytes, Supplier<T> work) {
    if (!room.tryAcquire()) {
      throw busy();
    }
    Piece<T> piece = Piece.of(work, capacity.deadline(bytes), watch, room::release);
    start(piece);
    Future<?> patience =
        watch.schedule(
            () -> giveUp(piece, busy()), capacity.patience().toMillis(), TimeUnit.MILLISECONDS);
    piece.result().whenComplete((told, failure) -> patience.cancel(false));
    return piece.result();
  }

  /**
   * Work that waits for its turn as long as it takes, in the thread that calls.
   *
   * @throws Refusal if it ran over its deadline
   * @throws CancellationException if the thread is interrupted or the service stops
   */
  <T> T inTurn(long bytes, Supplier<T> work) {
    Piece<T> piece = Piece.of(work, capacity.deadline(bytes), watch, () -> {});
    start(piece);
    try {
      return piece.result().get();
    } catch (ExecutionException e) {
      throw thrown(e.getCause());
    } catch (InterruptedException e) {
      if (!giveUp(piece, stopped())) {
        piece.cancel(true);
      }
      Thread.currentThread().interrupt();
      throw stopped();
    }
  }

  private void start(Piece<?> piece) {
    try {
      places.execute(piece);
    } catch (RejectedExecutionException e) {
      piece.giveUp(stopped());
    }
  }

  private boolean giveUp(Piece<?> piece, RuntimeException why) {
    places.remove(piece);
    return piece.giveUp(why);
  }

  private static RuntimeException thrown(Throwable cause) {
    if (cause instanceof Error error) {
      throw error;
    }
    return (RuntimeException) cause;
  }

  private static CancellationException stopped() {
    return new CancellationException("the service is stopping, or nobody waits for this");
  }

  private static Refusal busy() {
    Problem problem =
        Problem.of(
            Problem.Kind.BUSY, "Every place for a calculation is taken; try again in a moment.");
    return new Refusal(problem, Map.of("Retry-After", "2"));
  }

  /** How many pieces are being worked on. */
  int running() {
    return places.getActiveCount();
  }

  /** How many pieces wait for a place. */
  int waiting() {
    return places.getQueue().size();
  }

  /** How many pieces have ended. */
  long ended() {
    return places.getCompletedTaskCount();
  }

  /** Whether nothing runs and nothing waits. */
  boolean idle() {
    return running() == 0 && waiting() == 0;
  }

  /** How many more requests would be taken. */
  int room() {
    return room.availablePermits();
  }

  /** Stops what runs, and gives up what waits. */
  @Override
  public void close() {
    places.shutdownNow().forEach(piece -> ((Piece<?>) piece).giveUp(stopped()));
  }
}
