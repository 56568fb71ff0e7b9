package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Order, width and ends of a window. */
@Timeout(60)
class OrderedWindowTest {

  private final ExecutorService workers = Executors.newFixedThreadPool(2);

  @AfterEach
  void stop() {
    workers.shutdownNow();
  }

  /** The first piece waits for the second, so both are worked on at once. */
  @Test
  void resultsComeInTheOrderOfTheWork() throws Exception {
    OrderedWindow<String> window = new OrderedWindow<>(workers, 4);
    CountDownLatch second = new CountDownLatch(1);
    window.put(
        () -> {
          second.await();
          return "first";
        });
    window.put(
        () -> {
          second.countDown();
          return "second";
        });
    window.end();
    assertEquals(Optional.of("first"), window.take());
    assertEquals(Optional.of("second"), window.take());
    assertEquals(Optional.empty(), window.take());
  }

  @Test
  void whoPutsWaitsForRoom() throws Exception {
    OrderedWindow<Integer> window = new OrderedWindow<>(workers, 3);
    AtomicInteger begun = new AtomicInteger();
    Thread putting = new Thread(() -> put(window, begun, 10));
    putting.start();
    awaitWaitingAfter(3, begun, putting);
    window.take();
    awaitWaitingAfter(4, begun, putting);
    List<Integer> rest = new ArrayList<>();
    for (Optional<Integer> next = window.take(); next.isPresent(); next = window.take()) {
      rest.add(next.get());
    }
    assertEquals(List.of(2, 3, 4, 5, 6, 7, 8, 9, 10), rest);
  }

  @Test
  void failureComesAfterTheResults() throws Exception {
    OrderedWindow<String> window = new OrderedWindow<>(workers, 2);
    window.put(() -> "first");
    window.fail(new IOException("a test"));
    assertEquals(Optional.of("first"), window.take());
    Exception failure = assertThrows(ExecutionException.class, window::take);
    assertEquals("a test", failure.getCause().getMessage());
  }

  @Test
  void cancelledWorkIsNotBegun() throws Exception {
    OrderedWindow<Integer> window = new OrderedWindow<>(workers, 4);
    CountDownLatch begun = new CountDownLatch(2);
    CountDownLatch never = new CountDownLatch(1);
    AtomicInteger more = new AtomicInteger();
    for (int i = 0; i < 2; i++) {
      window.put(
          () -> {
            begun.countDown();
            never.await();
            return 0;
          });
    }
    window.put(more::incrementAndGet);
    begun.await();
    window.cancel();
    workers.shutdown();
    assertTrue(workers.awaitTermination(30, TimeUnit.SECONDS));
    assertEquals(0, more.get());
  }

  private static void put(OrderedWindow<Integer> window, AtomicInteger begun, int count) {
    try {
      for (int i = 1; i <= count; i++) {
        int number = i;
        window.put(() -> number);
        begun.incrementAndGet();
      }
      window.end();
    } catch (InterruptedException e) {
      window.fail(e);
    }
  }

  /** Waits until so many pieces are in and no more can be put. */
  private static void awaitWaitingAfter(int count, AtomicInteger begun, Thread putting) {
    while (begun.get() < count || putting.getState() != Thread.State.WAITING) {
      assertTrue(putting.isAlive() && !Thread.currentThread().isInterrupted(), "does not wait");
    }
    assertEquals(count, begun.get());
  }
}
