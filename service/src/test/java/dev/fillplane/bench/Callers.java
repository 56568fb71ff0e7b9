package dev.fillplane.bench;

import java.io.IOException;
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

  /** Stands for the status of a call whose connection broke. */
  static final int BROKEN = 0;

  private static final int BUSY = 503;

  /** What the service asks for by Retry-After. */
  private static final long RETRY_NANOS = 2_000_000_000;

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

  /** Calls over one connection after the other, should any break. */
  private Calls one(long until, int times) {
    Calls calls = new Calls();
    while (calls.all() < times && System.nanoTime() < until) {
      try (Wire wire = new Wire(port)) {
        over(wire, until, times, calls);
      } catch (IOException e) {
        calls.add(new Wire.Answer(BROKEN, 0), 0);
      }
    }
    return calls;
  }

  /** The time of a paced call begins when it was due, so that no wait is overlooked. */
  private void over(Wire wire, long until, int times, Calls calls) throws IOException {
    long due = System.nanoTime();
    while (calls.all() < times && due < until) {
      waitUntil(due);
      Wire.Answer answer = wire.send(request);
      long now = System.nanoTime();
      calls.add(answer, (now - due) / 1e6);
      due = everyNanos > 0 ? due + everyNanos : now;
      due = answer.status() == BUSY ? now + RETRY_NANOS : due;
    }
  }

  private static void waitUntil(long due) {
    while (System.nanoTime() < due) {
      LockSupport.parkNanos(due - System.nanoTime());
    }
  }
}
