package dev.fillplane.job;

import static dev.fillplane.job.JobNodes.USUAL;
import static dev.fillplane.job.JobNodes.accept;
import static dev.fillplane.job.JobNodes.ended;
import static dev.fillplane.job.JobNodes.status;
import static dev.fillplane.job.JobNodes.units;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import org.junit.jupiter.api.Test;

/** A key makes one job, however often it is asked. */
interface KeysOfJobs {

  /** The store and the nodes on it. */
  JobNodes here();

  @Test
  default void theSameKeyMakesOneJob() {
    Jobs jobs = here().node(CountingPlanner.free());
    TakenJob first = accept(jobs, "me", "key", "body");
    TakenJob again = accept(jobs, "me", "key", "body");
    assertFalse(first.replayed());
    assertTrue(again.replayed());
    assertEquals(first.id(), again.id());
    assertEquals(first.id(), new String(again.json(), StandardCharsets.UTF_8));
    KeyConflict other =
        assertThrows(KeyConflict.class, () -> accept(jobs, "me", "key", "another body"));
    assertFalse(other.stillRunning());
    assertFalse(accept(jobs, "you", "key", "another body").replayed(), "keys are the caller's");
  }

  @Test
  default void aKeyStillInUse() throws Exception {
    Jobs jobs = here().node(CountingPlanner.free());
    CountDownLatch taking = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    Optional<Keyed> key = Optional.of(new Keyed("key", "body"));
    CompletableFuture<TakenJob> first =
        CompletableFuture.supplyAsync(
            () ->
                jobs.accept(
                    JobOwner.of("me"),
                    USUAL,
                    units(2),
                    key,
                    status -> {
                      taking.countDown();
                      awaitQuietly(go);
                      return new byte[0];
                    }));
    taking.await();
    KeyConflict second = assertThrows(KeyConflict.class, () -> accept(jobs, "me", "key", "body"));
    assertTrue(second.stillRunning());
    go.countDown();
    assertEquals(first.get().id(), accept(jobs, "me", "key", "body").id());
  }

  /** The answer may be kept although its connection broke: then the key stays with it. */
  @Test
  default void anAnsweredKeyIsNotGivenFree() {
    Keyed key = new Keyed("key", "body");
    try (Database database = Database.open(here().store(), 2)) {
      boolean taken = database.change(c -> KeyTable.take(c, "me", key, "one", Instant.now()));
      assertTrue(taken);
      TakenJob answer = new TakenJob("id", new byte[] {1}, false);
      boolean kept = database.change(c -> KeyTable.answer(c, "me", "key", "one", answer));
      assertTrue(kept);
      database.change(
          connection -> {
            KeyTable.release(connection, "me", "key", "one");
            return null;
          });
      assertTrue(database.run(c -> KeyTable.find(c, "me", "key")).isPresent());
    }
  }

  /** Of two that come at the very same time; the loser's connection is of use afterwards. */
  @Test
  default void aKeyIsTakenByOne() {
    Keyed key = new Keyed("key", "body");
    Instant now = Instant.now();
    try (Database database = Database.open(here().store(), 3)) {
      boolean one = database.run(c -> KeyTable.take(c, "me", key, "one", now));
      boolean two = database.run(c -> KeyTable.take(c, "me", key, "two", now));
      assertTrue(one);
      assertFalse(two);
      assertEquals(
          "one", database.run(connection -> KeyTable.find(connection, "me", "key")).get().holder());
    }
  }

  /** Whoever comes back late finds its key taken over, and leaves no second job. */
  @Test
  default void aKeyOfANodeThatDiedIsTakenOver() throws Exception {
    TestClock clock = new TestClock();
    Jobs jobs = here().node(CountingPlanner.free(), clock, 2);
    CountDownLatch taking = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    List<String> ids = new ArrayList<>();
    CompletableFuture<TakenJob> late =
        CompletableFuture.supplyAsync(
            () ->
                jobs.accept(
                    JobOwner.of("me"),
                    USUAL,
                    units(2),
                    Optional.of(new Keyed("key", "body")),
                    status -> {
                      ids.add(status.id());
                      taking.countDown();
                      awaitQuietly(go);
                      return new byte[0];
                    }));
    taking.await();
    clock.jump(Duration.ofMinutes(3));
    TakenJob second = accept(jobs, "me", "key", "body");
    assertFalse(second.replayed());
    go.countDown();
    assertThrows(ExecutionException.class, late::get);
    assertEquals(Optional.empty(), jobs.status("me", ids.get(0)));
    assertEquals(second.id(), accept(jobs, "me", "key", "body").id());
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What fails leaves neither a job nor its key behind. */
  @Test
  default void aJobThatIsNotTakenLeavesNothing() {
    Jobs jobs = here().node(CountingPlanner.free());
    Optional<Keyed> key = Optional.of(new Keyed("key", "body"));
    List<String> ids = new ArrayList<>();
    assertThrows(
        IllegalStateException.class,
        () ->
            jobs.accept(
                JobOwner.of("me"),
                USUAL,
                units(3),
                key,
                status -> {
                  ids.add(status.id());
                  throw new IllegalStateException("no answer");
                }));
    assertEquals(Optional.empty(), jobs.status("me", ids.get(0)));
    assertFalse(accept(jobs, "me", "key", "body").replayed());
  }

  @Test
  default void keysAreKeptADayAndJobsUntilTheyExpire() {
    TestClock clock = new TestClock();
    Jobs jobs = here().node(CountingPlanner.free(), clock, 2);
    TakenJob first = accept(jobs, "me", "key", "body");
    ended(jobs, first.id());
    clock.jump(Duration.ofHours(23));
    assertTrue(accept(jobs, "me", "key", "body").replayed());
    clock.jump(Duration.ofHours(2));
    assertFalse(accept(jobs, "me", "key", "body").replayed());
    assertEquals(2, status(jobs, first.id()).done());
    clock.jump(Duration.ofDays(7));
    assertEquals(Optional.empty(), jobs.status("me", first.id()));
    assertEquals(Optional.empty(), jobs.rows("me", first.id(), 0, 10));
    jobs.sweep();
    clock.jump(Duration.ofDays(-9));
    assertEquals(Optional.empty(), jobs.status("me", first.id()), "swept, not only hidden");
  }
}
