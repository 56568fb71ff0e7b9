package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A store of jobs and the nodes on it: what the tests of jobs run on, whatever the store. */
@Timeout(120)
abstract class JobNodes {

  static final JobTerms USUAL = new JobTerms(null, null, Optional.empty());

  private final List<Jobs> nodes = new ArrayList<>();

  @TempDir private Path secrets;

  /** This one, for the tests that are told in interfaces. */
  public JobNodes here() {
    return this;
  }

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
}
