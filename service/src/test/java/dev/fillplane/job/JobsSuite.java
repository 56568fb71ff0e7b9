package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import dev.fillplane.trace.Trace;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What jobs promise, whatever store they are kept in. */
@Timeout(120)
abstract class JobsSuite {

  static final JobTerms USUAL = new JobTerms(null, null, Optional.empty());

  private final List<Jobs> nodes = new ArrayList<>();

  @TempDir private Path secrets;

  /** An empty store, the same one all through a test. */
  abstract StoreAddress store();

  Jobs node(UnitPlanner planner, Clock clock, int threads) {
    JobSettings settings =
        new JobSettings(
            store(),
            threads,
            JobSettings.KEPT,
            Duration.ofMillis(250),
            clock,
            webhooks(),
            JobWatch.NONE);
    Jobs jobs = new Jobs(settings, planner);
    nodes.add(jobs);
    return jobs;
  }

  /** Messages may go to this machine. */
  private WebhookSettings webhooks() {
    return new WebhookSettings(new WebhookTargets(true, true), secrets.resolve("master"));
  }

  Jobs node(UnitPlanner planner) {
    return node(planner, Clock.systemUTC(), 2);
  }

  @AfterEach
  void stop() {
    nodes.forEach(Jobs::close);
  }

  static List<UnitRequest> units(int count) {
    return IntStream.range(0, count).mapToObj(i -> unit("unit " + i)).toList();
  }

  static UnitRequest unit(String text) {
    byte[] body = text.getBytes(StandardCharsets.UTF_8);
    return UnitRequest.of(text, body, 0, body.length);
  }

  static String accept(Jobs jobs, List<UnitRequest> units) {
    return jobs.accept(JobOwner.of("me"), USUAL, units, Optional.empty(), status -> new byte[0])
        .id();
  }

  static TakenJob accept(Jobs jobs, String caller, String key, String digest) {
    return jobs.accept(
        JobOwner.of(caller),
        USUAL,
        units(2),
        Optional.of(new Keyed(key, digest)),
        status -> status.id().getBytes(StandardCharsets.UTF_8));
  }

  static JobStatus status(Jobs jobs, String id) {
    return jobs.status("me", id).orElseThrow();
  }

  static void until(BooleanSupplier holds) {
    while (!holds.getAsBoolean()) {
      LockSupport.parkNanos(10_000_000);
    }
  }

  static JobStatus ended(Jobs jobs, String id) {
    until(() -> status(jobs, id).state().ended() && status(jobs, id).endedAt().isPresent());
    return status(jobs, id);
  }

  static void everyUnitOnce(Jobs jobs, String id, int count) {
    List<UnitRow> rows = jobs.rows("me", id, 0, count + 10).orElseThrow();
    assertEquals(count, rows.size());
    for (int i = 0; i < count; i++) {
      assertEquals(i, rows.get(i).unit());
      assertEquals(
          "plan of " + rows.get(i).reference(),
          new String(rows.get(i).json(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void everyUnitIsPlannedOnceAndStandsInItsPlace() {
    CountingPlanner planner = CountingPlanner.free();
    Jobs jobs = node(planner);
    String id = accept(jobs, units(60));
    JobStatus ended = ended(jobs, id);
    assertEquals(JobState.FINISHED, ended.state());
    assertEquals(60, ended.done());
    assertEquals(0, ended.failed());
    everyUnitOnce(jobs, id, 60);
    assertTrue(planner.seen().values().stream().allMatch(times -> times == 1));
  }

  @Test
  void aUnitWithoutAPlanStopsNoOther() {
    Jobs jobs = node(CountingPlanner.free());
    String id = accept(jobs, List.of(unit("one"), unit("bad two"), unit("three")));
    JobStatus ended = ended(jobs, id);
    assertEquals(JobState.FINISHED, ended.state());
    assertEquals(1, ended.failed());
    assertEquals(List.of(new JobStatus.FailedUnit(1, "bad two")), ended.failures());
    everyUnitOnce(jobs, id, 3);
    assertEquals(2, jobs.needs("me", id).orElseThrow().order().planned());
    String bad = accept(jobs, List.of(unit("bad one")));
    assertEquals(JobState.FAILED, ended(jobs, bad).state());
  }

  @Test
  void aJobTellsHowFarItIs() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = node(planner);
    String id = accept(jobs, units(6));
    planner.awaitBegun(2);
    assertEquals(JobState.QUEUED, status(jobs, id).state());
    planner.let(3);
    until(() -> status(jobs, id).done() == 3);
    assertEquals(JobState.RUNNING, status(jobs, id).state());
    assertEquals(3, jobs.needs("me", id).orElseThrow().order().planned());
    planner.let(3);
    assertEquals(JobState.FINISHED, ended(jobs, id).state());
  }

  /** A small job does not wait for all of a large one. */
  @Test
  void jobsTakeTurns() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = node(planner);
    String large = accept(jobs, units(60));
    planner.awaitBegun(2);
    String small = accept(jobs, List.of(unit("small")));
    planner.let(20);
    until(() -> status(jobs, small).done() == 1);
    assertTrue(status(jobs, large).done() < 60);
    planner.let(41);
    ended(jobs, large);
  }

  @Test
  void cancelledInTheMiddle() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = node(planner);
    String id = accept(jobs, units(40));
    planner.let(4);
    until(() -> status(jobs, id).done() == 4);
    assertTrue(jobs.delete("me", id));
    assertEquals(JobState.CANCELLED, status(jobs, id).state());
    planner.let(40);
    String next = accept(jobs, units(3));
    ended(jobs, next);
    assertEquals(JobState.CANCELLED, status(jobs, id).state());
    // two were being worked on, and two more may have been taken up
    assertTrue(status(jobs, id).done() <= 8, "done " + status(jobs, id).done());
    assertTrue(jobs.delete("me", id), "then it is forgotten");
    assertEquals(Optional.empty(), jobs.status("me", id));
    assertFalse(jobs.delete("me", id));
  }

  @Test
  void nobodySeesJobsOfOthers() {
    Jobs jobs = node(CountingPlanner.free());
    String id = accept(jobs, units(2));
    ended(jobs, id);
    assertEquals(Optional.empty(), jobs.status("you", id));
    assertEquals(Optional.empty(), jobs.rows("you", id, 0, 10));
    assertEquals(Optional.empty(), jobs.needs("you", id));
    assertFalse(jobs.delete("you", id));
    assertEquals(Optional.empty(), jobs.status("me", "no such job"));
    assertEquals(2, status(jobs, id).done());
  }

  @Test
  void theSameKeyMakesOneJob() {
    Jobs jobs = node(CountingPlanner.free());
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
  void aKeyStillInUse() throws Exception {
    Jobs jobs = node(CountingPlanner.free());
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

  /** All units are done, and nobody has noted the end yet: there is nothing to cancel. */
  @Test
  void aJobThatIsDoneIsForgotten() {
    Clock clock = Clock.systemUTC();
    try (Database database = Database.open(store(), 2)) {
      JobTasks tasks = new JobTasks((job, unit) -> {});
      Sweeper sweeper = new Sweeper(database, clock);
      JobStore jobs = new JobStore(database, tasks, sweeper, clock, JobSettings.KEPT);
      String id =
          jobs.accept(JobOwner.of("me"), USUAL, units(1), Optional.empty(), status -> new byte[0])
              .id();
      UnitAnswer answer = new UnitAnswer(new byte[] {'{', '}'}, Optional.empty());
      database.change(
          connection -> {
            UnitTable.answer(connection, id, 0, answer);
            return null;
          });
      assertTrue(jobs.delete("me", id));
      assertEquals(Optional.empty(), jobs.status("me", id));
    }
  }

  /** The answer may be kept although its connection broke: then the key stays with it. */
  @Test
  void anAnsweredKeyIsNotGivenFree() {
    Keyed key = new Keyed("key", "body");
    try (Database database = Database.open(store(), 2)) {
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
  void aKeyIsTakenByOne() {
    Keyed key = new Keyed("key", "body");
    Instant now = Instant.now();
    try (Database database = Database.open(store(), 3)) {
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
  void aKeyOfANodeThatDiedIsTakenOver() throws Exception {
    TestClock clock = new TestClock();
    Jobs jobs = node(CountingPlanner.free(), clock, 2);
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
  void aJobThatIsNotTakenLeavesNothing() {
    Jobs jobs = node(CountingPlanner.free());
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
  void keysAreKeptADayAndJobsUntilTheyExpire() {
    TestClock clock = new TestClock();
    Jobs jobs = node(CountingPlanner.free(), clock, 2);
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

  /** Back, so that what was planned for now lies ahead; and on, so that every node looks dead. */
  @Test
  void aClockThatJumpsNeitherStopsNorDoublesAUnit() {
    TestClock clock = new TestClock();
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = node(planner, clock, 2);
    String id = accept(jobs, units(12));
    planner.awaitBegun(2);
    clock.jump(Duration.ofHours(-5));
    planner.let(4);
    until(() -> status(jobs, id).done() == 4);
    clock.jump(Duration.ofDays(2));
    planner.let(100);
    JobStatus ended = ended(jobs, id);
    assertEquals(12, ended.done());
    everyUnitOnce(jobs, id, 12);
  }

  /** A node that stops gives its units back, and the next one goes on without being told. */
  @Test
  void theNextNodeGoesOn() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs first = node(planner);
    String id = accept(first, units(20));
    planner.let(5);
    until(() -> status(first, id).done() == 5);
    planner.let(2);
    first.close();
    CountingPlanner other = CountingPlanner.free();
    Jobs second = node(other);
    second.resume();
    assertEquals(20, ended(second, id).done());
    everyUnitOnce(second, id, 20);
  }

  @Test
  void nothingIsOpenedUntilThereIsAJob() {
    assertEquals(store().shared(), store().mayHoldJobs());
    Jobs jobs = node(CountingPlanner.free());
    jobs.resume();
    assertEquals(Optional.empty(), jobs.status("me", "no such job"));
    assertEquals(store().shared(), store().mayHoldJobs());
    accept(jobs, units(1));
    assertTrue(store().mayHoldJobs());
  }

  /** The first time it answers that it failed; then it is told the same again, and never more. */
  @Test
  void whoIsToldHearsOfTheEnd() throws Exception {
    BlockingQueue<String> heard = new LinkedBlockingQueue<>();
    BlockingQueue<String> traces = new LinkedBlockingQueue<>();
    Trace trace = Trace.begin();
    HttpServer receiver = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
    receiver.createContext(
        "/",
        exchange -> {
          String body =
              new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
          boolean first = heard.isEmpty();
          heard.add(exchange.getRequestHeaders().getFirst("webhook-id") + " " + body);
          traces.add(exchange.getRequestHeaders().getFirst("traceparent").substring(0, 36));
          exchange.sendResponseHeaders(first ? 500 : 204, -1);
          exchange.close();
        });
    receiver.start();
    try {
      TestClock clock = new TestClock();
      Jobs jobs = node(CountingPlanner.free(), clock, 2);
      String url = "http://127.0.0.1:" + receiver.getAddress().getPort() + "/told";
      JobTerms terms = new JobTerms(null, null, Optional.of(new WebhookWish(url)));
      List<UnitRequest> units = List.of(unit("one"), unit("bad two"));
      JobOwner me = new JobOwner("me", Optional.of(trace));
      String id = jobs.accept(me, terms, units, Optional.empty(), status -> new byte[0]).id();
      until(() -> heard.size() == 1);
      clock.jump(Duration.ofSeconds(6));
      until(() -> heard.size() == 2);
      String told = heard.take();
      assertEquals(told, heard.take());
      assertEquals("00-" + trace.id() + "-", traces.take());
      assertTrue(told.startsWith("msg_" + id + " {\"type\":\"job.ended\""), told);
      assertTrue(told.contains("\"state\":\"finished\""), told);
    } finally {
      receiver.stop(0);
    }
  }
}
