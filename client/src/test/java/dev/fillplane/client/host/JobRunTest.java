package dev.fillplane.client.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.ProblemException;
import dev.fillplane.client.host.StubEstimator.Answer;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Plans of every unit of a host by a job, from a stub. */
@Timeout(30)
class JobRunTest {
  private static final String END = ", \"endedAt\": \"2026-03-01T08:00:10Z\"";
  private static final Answer PLANS =
      new Answer(
          200,
          """
          {"items": [
            {"unit": 0, "reference": "unit 0", "state": "planned", "plan": {"reference": "zero"}},
            {"unit": 1, "reference": "unit 1", "state": "failed",
             "problem": {"type": "urn:fillplane:problem:invalid", "title": "No", "status": 422,
                         "detail": "One thing.", "errors": []}},
            {"unit": 2, "reference": "unit 2", "state": "planned", "plan": {"reference": "two"}}]}
          """);
  private static final Answer HALF =
      new Answer(
          200,
          """
          {"items": [
            {"unit": 0, "reference": "unit 0", "state": "planned", "plan": {"reference": "zero"}},
            {"unit": 1, "reference": "unit 1", "state": "waiting"},
            {"unit": 2, "reference": "unit 2", "state": "waiting"}]}
          """);

  private int looks;

  @Test
  void everyUnitIsHandedOver() {
    TestHost host = new TestHost(3);
    RunSummary summary = run(host, asked -> asked.contains("/plans") ? PLANS : job(asked, 2));
    assertEquals(
        List.of("unit 0: plan of zero", "unit 1: invalid", "unit 2: plan of two"), host.told);
    assertEquals(new RunSummary(2, 1, List.of(), Optional.empty(), false), summary);
  }

  @Test
  void aJobThatIsNotDoneInTimeIsCancelledAndWhatIsThereHandedOver() {
    TestHost host = new TestHost(3);
    try (StubEstimator service =
        new StubEstimator(asked -> asked.contains("/plans") ? HALF : job(asked, 1000))) {
      RunSummary summary = new HostRun(service.client()).job(host, Duration.ofSeconds(9));
      assertEquals(List.of("unit 0: plan of zero"), host.told);
      assertEquals(List.of("unit 1", "unit 2"), summary.unanswered());
      assertInstanceOf(HostException.class, summary.endedBy().orElseThrow());
      assertTrue(service.asked().contains("DELETE /v1/jobs/j1 "), service.asked().toString());
    }
  }

  @Test
  void aHostThatStopsCancelsTheJobAndGetsWhatIsThere() {
    TestHost host = new TestHost(3);
    host.stopAfterLooks = 1;
    try (StubEstimator service =
        new StubEstimator(asked -> asked.contains("/plans") ? HALF : job(asked, 10))) {
      RunSummary summary = new HostRun(service.client()).job(host, Duration.ofHours(1));
      assertTrue(summary.cancelled());
      assertEquals(1, summary.done());
      assertEquals(List.of("unit 1", "unit 2"), summary.unanswered());
      long deletes = service.asked().stream().filter(asked -> asked.startsWith("DELETE")).count();
      assertEquals(1, deletes);
    }
  }

  @Test
  void aRefusedJobNamesItsUnits() {
    TestHost host = new TestHost(3);
    RunSummary summary = run(host, asked -> new Answer(422, "{}"));
    assertInstanceOf(ProblemException.class, summary.endedBy().orElseThrow());
    assertEquals(List.of("unit 0", "unit 1", "unit 2"), summary.unanswered());
    assertFalse(summary.complete());
  }

  @Test
  void aJobThatIsLostSightOfIsNamed() {
    RunSummary unseen =
        run(
            new TestHost(3),
            asked -> asked.startsWith("/v1/jobs {") ? job(asked, 2) : new Answer(500, "{}"));
    assertNamesTheJob(unseen);
    RunSummary unread =
        run(
            new TestHost(3),
            asked -> asked.contains("/plans") ? new Answer(404, "{}") : job(asked, 2));
    assertNamesTheJob(unread);
  }

  private static void assertNamesTheJob(RunSummary summary) {
    RuntimeException lost = summary.endedBy().orElseThrow();
    assertTrue(lost.getMessage().contains("job j1 was lost sight of"), lost.getMessage());
    assertInstanceOf(ProblemException.class, lost.getCause());
    assertEquals(List.of("unit 0", "unit 1", "unit 2"), summary.unanswered());
  }

  @Test
  void noUnitsNoJob() {
    TestHost host = new TestHost(0);
    RunSummary summary = run(host, asked -> new Answer(500, "{}"));
    assertTrue(summary.complete());
  }

  @Test
  void aSourceThatFailsStartsNoJob() {
    TestHost host = new TestHost(5);
    host.failAt = 2;
    try (StubEstimator service = new StubEstimator(asked -> PLANS)) {
      RunSummary summary = new HostRun(service.client()).job(host, Duration.ofHours(1));
      assertEquals("no unit 2", summary.endedBy().orElseThrow().getMessage());
      assertEquals(List.of("unit 0", "unit 1"), summary.unanswered());
      assertEquals(List.of(), service.asked());
    }
  }

  /** The job as it is: it ends after some looks. */
  private Answer job(String asked, int looksToTheEnd) {
    if (asked.startsWith("/v1/jobs {")) {
      return new Answer(202, state("queued", ""));
    }
    looks++;
    boolean ended = looks > looksToTheEnd;
    return new Answer(200, state(ended ? "finished" : "running", ended ? END : ""));
  }

  private static String state(String state, String more) {
    return "{\"id\": \"j1\", \"state\": \"" + state + "\", \"done\": 1, \"of\": 3" + more + "}";
  }

  private static RunSummary run(TestHost host, Function<String, Answer> service) {
    try (StubEstimator estimator = new StubEstimator(service)) {
      return new HostRun(estimator.client()).job(host, Duration.ofHours(1));
    }
  }
}
