package dev.fillplane.web;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;

/**
 * Work that is done side by side, whose results come out in the order in which it was put in. One
 * thread puts, another takes; who puts waits while as many pieces are inside as the window is wide.
 */
final class OrderedWindow<T> {

  private final ExecutorService workers;
  private final Semaphore room;
  private final BlockingQueue<Future<Optional<T>>> inside = new LinkedBlockingQueue<>();

  OrderedWindow(ExecutorService workers, int width) {
    this.workers = workers;
    this.room = new Semaphore(width);
  }

  /** Puts work in as soon as there is room. */
  void put(Callable<T> work) throws InterruptedException {
    room.acquire();
    inside.add(workers.submit(() -> Optional.of(work.call())));
  }

  /** Nothing more comes. */
  void end() {
    inside.add(CompletableFuture.completedFuture(Optional.empty()));
  }

  /** Nothing more comes, because of {@code cause}, which the taker gets after all results. */
  void fail(Throwable cause) {
    inside.add(CompletableFuture.failedFuture(cause));
  }

  /**
   * The next result; empty after the last.
   *
   * @throws ExecutionException if the work, or putting it in, failed
   */
  Optional<T> take() throws InterruptedException, ExecutionException {
    Optional<T> result = inside.take().get();
    room.release();
    return result;
  }

  /** Gives up what is inside; call it when nobody puts any more. */
  void cancel() {
    inside.forEach(work -> work.cancel(true));
  }
}
