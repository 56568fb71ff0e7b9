package dev.fillplane.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.LockSupport;

/**
 * Callers that all send the same request for a while, each over a connection of its own.
 *
 * @param port where the service listens
 * @param request what they send
 * @param count how many they are
 * @param everyNanos how long after its last request each sends the next one; 0 for as soon as it
 *     has its answer
 */
record Callers(int port, byte[] request, int count, long everyNanos) {

  /** Callers of {@code path} who wait for nothing but their answers. */
  static Callers of(ServiceProcess service, String path, byte[] body, int count) {
    return new Callers(service.port(), Wire.post(path, body), count, 0);
  }

  /** The same calling {@code perSecond} times a second each. */
  Callers paced(double perSecond) {
    return new Callers(port, request, count, (long) (1e9 / perSecond));
  }

  /** Calls for some seconds. */
  Calls callFor(double seconds) throws InterruptedException {
    return call(System.nanoTime() + (long) (seconds * 1e9), Integer.MAX_VALUE);
  }

  /** Each calls so many times. */
  Calls call(int times) throws InterruptedException {
    return call(Long.MAX_VALUE, times);
  }

  private Calls call(long until, int times) throws InterruptedException {
    ExecutorService threads = Executors.newFixedThreadPool(count);
    try {
      long begun = System.nanoTime();
      List<Future<Calls>> parts = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        parts.add(threads.submit(() -> one(until, times)));
      }
      Calls all = new Calls();
      for (Future<Calls> part : parts) {
        all.add(part.get());
      }
      return all.took((System.nanoTime() - begun) / 1e9);
    } catch (ExecutionException e) {
      throw new IllegalStateException(e);
    } finally {
      threads.shutdown();
    }
  }

  /** The time of a paced call begins when it was due, so that no wait is overlooked. */
  private Calls one(long until, int times) {
    Calls calls = new Calls();
    long due = System.nanoTime();
    try (Wire wire = new Wire(port)) {
      for (int i = 0; i < times && (until == Long.MAX_VALUE || due < until); i++) {
        while (everyNanos > 0 && System.nanoTime() < due) {
          LockSupport.parkNanos(due - System.nanoTime());
        }
        Wire.Answer answer = wire.send(request);
        long now = System.nanoTime();
        calls.add(answer, (now - due) / 1e6);
        due = everyNanos > 0 ? due + everyNanos : now;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return calls;
  }
}
