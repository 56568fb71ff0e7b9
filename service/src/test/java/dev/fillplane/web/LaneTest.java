package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Stopped;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Places, the queue before them, patience and deadline, with work that does as it is told. */
@Timeout(60)
class LaneTest {

  private static final Duration LONG = Duration.ofMinutes(10);

  /** A body so large that its deadline is a minute away. */
  private static final long LARGE = 60_000_000;

  private static final Duration SHORT = Duration.ofMillis(20);
  private static final Capacity ROOMY = new Capacity(2, 3, LONG, LONG, 1_000_000);

  private final ScheduledExecutorService watch = Watch.start();
  private final CountDownLatch open = new CountDownLatch(1);
  private Lane lane = new Lane(ROOMY, watch);

  @AfterEach
  void close() {
    open.countDown();
    lane.close();
    watch.shutdownNow();
  }

  private void lane(Capacity capacity) {
    lane.close();
    lane = new Lane(capacity, watch);
  }

  /** Work that ends when it is let go. */
  private Supplier<String> held(CountDownLatch begun) {
    return () -> {
      begun.countDown();
      try {
        open.await();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        Stopped.ifInterrupted();
      }
      return "done";
    };
  }

  /** Work that never ends by itself, but asks whether it should. */
  private static String endless(CountDownLatch ended) {
    try {
      while (true) {
        Stopped.ifInterrupted();
        Thread.onSpinWait();
      }
    } finally {
      ended.countDown();
    }
  }

  private List<CompletableFuture<String>> fillPlaces(int count) throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(count);
    List<CompletableFuture<String>> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      all.add(lane.submit(0, held(begun)));
    }
    begun.await();
    return all;
  }

  private static Problem refusal(CompletableFuture<?> result) {
    CompletionException e = assertThrows(CompletionException.class, result::join);
    return ((Refusal) e.getCause()).problem();
  }

  @Test
  void onlySoManyRunAndSoManyWait() throws Exception {
    List<CompletableFuture<String>> all = fillPlaces(2);
    for (int i = 0; i < 3; i++) {
      all.add(lane.submit(0, () -> "waited"));
    }
    assertEquals(2, lane.running());
    assertEquals(3, lane.waiting());
    Refusal refused = assertThrows(Refusal.class, () -> lane.submit(0, () -> "too many"));
    assertEquals(503, refused.problem().status());
    assertEquals("2", refused.headers().get("Retry-After"));
    open.countDown();
    for (CompletableFuture<String> one : all) {
      assertTrue(List.of("done", "waited").contains(one.get()));
    }
    assertEquals(5, lane.room());
  }

  @Test
  void whoFindsNoPlaceInTimeIsSentAway() throws Exception {
    lane(ROOMY.withPatience(SHORT));
    fillPlaces(2);
    AtomicInteger runs = new AtomicInteger();
    CompletableFuture<Integer> late = lane.submit(0, runs::incrementAndGet);
    assertEquals("urn:fillplane:problem:busy", refusal(late).type());
    assertEquals(0, lane.waiting());
    assertEquals(3, lane.room());
    open.countDown();
    assertEquals("next", lane.submit(0, () -> "next").get());
    assertEquals(0, runs.get());
  }

  /** Three times as many as there are places: the answer is there, and then the place as well. */
  @Test
  void whatRunsOverItsDeadlineIsStopped() throws Exception {
    lane(ROOMY.withDeadline(SHORT));
    for (int i = 0; i < 6; i++) {
      CountDownLatch ended = new CountDownLatch(1);
      CompletableFuture<String> never = lane.submit(0, () -> endless(ended));
      Problem problem = refusal(never);
      assertEquals(503, problem.status());
      assertEquals("urn:fillplane:problem:over-deadline", problem.type());
      ended.await();
    }
    assertEquals("next", lane.submit(LARGE, () -> "next").get());
  }

  /** A mark that was left over would stop the next piece, which asks for it first of all. */
  @Test
  void theMarkOfAnInterruptionReachesNoOtherPiece() throws Exception {
    lane(new Capacity(1, 3, LONG, SHORT, 1_000_000));
    for (int i = 0; i < 50; i++) {
      refusal(lane.submit(0, () -> endless(new CountDownLatch(1))));
      assertFalse(lane.submit(LARGE, () -> Thread.currentThread().isInterrupted()).get());
    }
  }

  @Test
  void aDeadlineOfNothingLeaksNoRoom() throws Exception {
    lane(ROOMY.withDeadline(Duration.ZERO));
    for (int i = 0; i < 20; i++) {
      refusal(lane.submit(0, () -> endless(new CountDownLatch(1))));
    }
    assertEquals("next", lane.submit(LARGE, () -> "next").get());
  }

  @Test
  void aLargeBodyHasMoreTime() {
    assertEquals(Duration.ofSeconds(30), Capacity.usual().deadline(999_999));
    assertEquals(Duration.ofSeconds(94), Capacity.usual().deadline(64_000_000));
  }

  @Test
  void whatIsThrownArrives() {
    Supplier<String> failing =
        () -> {
          throw new IllegalStateException("a test");
        };
    CompletableFuture<String> failed = lane.submit(0, failing);
    assertEquals(
        "a test", assertThrows(CompletionException.class, failed::join).getCause().getMessage());
    assertThrows(IllegalStateException.class, () -> lane.inTurn(0, failing));
    assertThrows(
        StackOverflowError.class,
        () ->
            lane.inTurn(
                0,
                () -> {
                  throw new StackOverflowError("a test");
                }));
  }

  /** Lines and units wait behind requests and before those that come later. */
  @Test
  void allComeInTheirTurn() throws Exception {
    List<String> order = Collections.synchronizedList(new ArrayList<>());
    lane(ROOMY.withPlaces(1, 9));
    CountDownLatch begun = new CountDownLatch(1);
    lane.submit(0, held(begun));
    begun.await();
    lane.submit(0, () -> order.add("first"));
    Thread unit = new Thread(() -> lane.inTurn(0, () -> order.add("unit")));
    unit.start();
    while (lane.waiting() < 2) {
      Thread.onSpinWait();
    }
    CompletableFuture<Boolean> last = lane.submit(0, () -> order.add("last"));
    open.countDown();
    last.get();
    unit.join();
    assertEquals(List.of("first", "unit", "last"), order);
  }

  @Test
  void whoIsInterruptedWhileItWaitsTakesItsWorkBack() throws Exception {
    fillPlaces(2);
    AtomicInteger runs = new AtomicInteger();
    CompletableFuture<Throwable> end = new CompletableFuture<>();
    Thread waits =
        new Thread(
            () -> {
              try {
                lane.inTurn(0, runs::incrementAndGet);
              } catch (CancellationException e) {
                end.complete(e);
              }
            });
    waits.start();
    while (lane.waiting() < 1) {
      Thread.onSpinWait();
    }
    waits.interrupt();
    end.get();
    assertEquals(0, lane.waiting());
    assertEquals(0, runs.get());
  }

  @Test
  void closingStopsWhatRunsAndGivesUpWhatWaits() throws Exception {
    List<CompletableFuture<String>> all = fillPlaces(2);
    all.add(lane.submit(0, () -> "waited"));
    lane.close();
    for (CompletableFuture<String> one : all) {
      assertThrows(CancellationException.class, one::get);
    }
    CompletableFuture<String> later = lane.submit(0, () -> "later");
    assertThrows(CancellationException.class, later::get);
  }
}
