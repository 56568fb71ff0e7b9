package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.generated.model.Job;
import dev.fillplane.client.generated.model.JobRequest;
import dev.fillplane.client.generated.model.JobUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Jobs against a service that answers by a script. */
@Timeout(30)
class RunningJobTest {
  private static final String TAKEN = state("202 Accepted", "Retry-After: 3\r\n", "queued", 0, "");
  private static final String RUNNING = state("200 OK", "Retry-After: 7\r\n", "running", 1, "");
  private static final String ENDED =
      state("200 OK", "", "finished", 2, ", \"endedAt\": \"2026-03-01T08:00:10Z\"");

  private final VirtualTime time = new VirtualTime("2026-03-01T08:00:00Z");
  private final List<Integer> seen = new ArrayList<>();

  @Test
  void looksAsOftenAsTheServiceSays() {
    try (RawService service = new RawService(TAKEN, RUNNING, ENDED)) {
      RunningJob job = client(service).startJob(new JobRequest());
      assertEquals("j1", job.id());
      assertEquals("finished", await(job, Duration.ofMinutes(1)).orElseThrow().getState());
      assertEquals(List.of(Duration.ofSeconds(3), Duration.ofSeconds(7)), time.pauses());
      assertEquals(List.of(1, 2), seen);
      assertEquals("POST /v1/jobs", service.asked(0));
      assertEquals("GET /v1/jobs/j1", service.asked(2));
    }
  }

  @Test
  void isOneJobHoweverOftenItIsAskedFor() {
    try (RawService service = new RawService(RawService.busy("0"), "", TAKEN)) {
      client(service).startJob(new JobRequest());
      Optional<String> key = service.header(0, "Idempotency-Key");
      assertTrue(key.isPresent());
      assertEquals(key, service.header(1, "Idempotency-Key"));
      assertEquals(key, service.header(2, "Idempotency-Key"));
    }
  }

  @Test
  void waitsNoLongerThanItsPatience() {
    try (RawService service = new RawService(TAKEN, RUNNING)) {
      RunningJob job = client(service).startJob(new JobRequest());
      assertEquals(Optional.empty(), await(job, Duration.ofSeconds(5)));
      assertEquals(List.of(Duration.ofSeconds(3), Duration.ofSeconds(2)), time.pauses());
    }
  }

  @Test
  void doesNotLookWithoutPause() {
    String hasty = state("200 OK", "Retry-After: 0\r\n", "running", 0, "");
    String silent = state("200 OK", "", "running", 0, "");
    try (RawService service = new RawService(hasty, silent, ENDED)) {
      assertTrue(await(client(service).job("j1"), Duration.ofMinutes(1)).isPresent());
      assertEquals(List.of(Duration.ofMillis(100), Duration.ofSeconds(2)), time.pauses());
    }
  }

  /** A node of the service may go down while it is asked. */
  @Test
  void looksAgainWhereTheServiceIsAway() {
    try (RawService service = new RawService(RUNNING, "", RawService.busy("1"), ENDED)) {
      assertTrue(await(client(service).job("j1"), Duration.ofMinutes(1)).isPresent());
      assertEquals(4, service.requests());
    }
  }

  @Test
  void cancelsWhatHasNotEnded() {
    String done = "HTTP/1.1 204 No Content\r\nConnection: close\r\n\r\n";
    try (RawService service = new RawService(RUNNING, done)) {
      client(service).job("j1").cancel();
      assertEquals("DELETE /v1/jobs/j1", service.asked(1));
    }
    try (RawService service = new RawService(ENDED, done)) {
      client(service).job("j1").cancel();
      assertEquals(1, service.requests(), "deleting would forget its plans");
    }
  }

  /** Asked twice, the service would forget the job with its plans. */
  @Test
  void asksOnceOnlyToCancel() {
    try (RawService service = new RawService(RUNNING, "", ENDED)) {
      client(service).job("j1").cancel();
      assertEquals("DELETE /v1/jobs/j1", service.asked(1));
      assertEquals("GET /v1/jobs/j1", service.asked(2));
      assertEquals(3, service.requests());
    }
  }

  @Test
  void readsPageByPage() {
    String first =
        """
        {"items": [{"unit": 0, "reference": "a", "state": "planned", "plan": {"reference": "a"}},
                   {"unit": 1, "reference": "b", "state": "failed", "problem": {"status": 422}}],
         "nextCursor": "c 2"}
        """;
    String empty = "{\"items\": [], \"nextCursor\": \"c3\"}";
    String last = "{\"items\": [{\"unit\": 2, \"reference\": \"c\", \"state\": \"waiting\"}]}";
    try (RawService service =
        new RawService(RawService.ok(first), RawService.ok(empty), RawService.ok(last))) {
      Iterator<JobUnit> units = client(service).job("j1").units();
      assertEquals("a", units.next().getPlan().getReference());
      assertEquals(422, units.next().getProblem().getStatus());
      assertEquals(1, service.requests(), "the next page only when it is needed");
      assertEquals("waiting", units.next().getState());
      assertThrows(NoSuchElementException.class, units::next);
      assertTrue(service.asked(1).contains("cursor=c+2") || service.asked(1).contains("c%202"));
    }
  }

  private Optional<Job> await(RunningJob job, Duration patience) {
    return job.await(patience, look -> seen.add(look.getDone()));
  }

  private FillplaneClient client(RawService service) {
    return FillplaneClient.at(service.address()).time(time, 1).build();
  }

  private static String state(String status, String headers, String state, int done, String more) {
    String json =
        "{\"id\": \"j1\", \"state\": \"%s\", \"done\": %d, \"of\": 2%s}"
            .formatted(state, done, more);
    return RawService.answer(status, "Content-Type: application/json\r\n" + headers, json);
  }
}
