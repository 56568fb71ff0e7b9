package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.generated.api.HealthApi;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The client against services that are busy, break off or are not there. */
@Timeout(30)
class RetriesTest {
  private static final Retries FIVE =
      new Retries(5, Duration.ofSeconds(1), Duration.ofSeconds(3), Duration.ofMinutes(2));
  private static final String HALF =
      "HTTP/1.1 200 OK\r\nContent-Type: application/json\r\nContent-Length: 40\r\n\r\n{\"state\": ";

  private final VirtualTime time = new VirtualTime("2026-03-01T08:00:00Z");

  @ParameterizedTest
  @ValueSource(strings = {"503 Busy", "429 Too Many Requests", "408 Request Timeout"})
  void asksAgainWhereTheTroubleMayPass(String status) {
    try (RawService service =
        new RawService(RawService.answer(status, "", ""), RawService.alive())) {
      assertEquals("up", state(service));
      assertEquals(2, service.requests());
      assertEquals(1, time.pauses().size());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"500 Failed", "502 Bad Gateway", "422 No", "404 None", "401 Who"})
  void asksOnceWhereItWillNot(String status) {
    try (RawService service =
        new RawService(RawService.answer(status, "Retry-After: 1\r\n", ""), RawService.alive())) {
      assertThrows(ProblemException.class, () -> state(service));
      assertEquals(1, service.requests());
    }
  }

  @Test
  void asksOnceWhereTheWorkIsTooMuch() {
    String body =
        "{\"type\":\"urn:fillplane:problem:over-deadline\",\"title\":\"t\",\"status\":503,"
            + "\"detail\":\"d\",\"errors\":[]}";
    String type = "Content-Type: application/problem+json\r\n";
    try (RawService service =
        new RawService(RawService.answer("503 Busy", type, body), RawService.alive())) {
      assertThrows(ProblemException.class, () -> state(service));
      assertEquals(1, service.requests());
    }
  }

  /** The first attempt with the same Idempotency-Key may still be worked on. */
  @Test
  void asksAgainAfterAConflictThatSaysWhen() {
    String conflict = RawService.answer("409 Conflict", "Retry-After: 1\r\n", "");
    try (RawService service = new RawService(conflict, RawService.alive())) {
      assertEquals("up", state(service));
    }
    try (RawService service = new RawService(RawService.answer("409 Conflict", "", ""))) {
      assertThrows(ProblemException.class, () -> state(service));
      assertEquals(1, service.requests());
    }
  }

  @Test
  void pausesGrowAreJitteredAndEnd() {
    try (RawService service = new RawService(RawService.answer("503 Busy", "", ""))) {
      ProblemException problem = assertThrows(ProblemException.class, () -> state(service));
      assertEquals(503, problem.status());
      assertEquals(5, service.requests());
      List<Duration> pauses = time.pauses();
      between(500, 1000, pauses.get(0));
      between(1000, 2000, pauses.get(1));
      between(1500, 3000, pauses.get(2));
      between(1500, 3000, pauses.get(3));
      assertNotEquals(pauses.get(2), pauses.get(3), "jitter");
    }
  }

  @Test
  void theSameSeedPausesAlike() {
    VirtualTime other = new VirtualTime("2026-03-01T08:00:00Z");
    try (RawService service = new RawService(RawService.answer("503 Busy", "", ""))) {
      assertThrows(ProblemException.class, () -> state(client(service.address(), time, 1)));
      assertThrows(ProblemException.class, () -> state(client(service.address(), other, 1)));
      assertEquals(time.pauses(), other.pauses());
      VirtualTime third = new VirtualTime("2026-03-01T08:00:00Z");
      assertThrows(ProblemException.class, () -> state(client(service.address(), third, 2)));
      assertNotEquals(time.pauses(), third.pauses());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"30", "Sun, 01 Mar 2026 08:00:30 GMT"})
  void waitsAsLongAsItIsAskedTo(String retryAfter) {
    try (RawService service = new RawService(RawService.busy(retryAfter), RawService.alive())) {
      assertEquals("up", state(service));
      between(30_000, 31_000, time.pauses().get(0));
    }
  }

  @Test
  void tellsWhenItIsAskedToWaitBeyondItsPatience() {
    try (RawService service = new RawService(RawService.busy("3600"), RawService.alive())) {
      ProblemException problem = assertThrows(ProblemException.class, () -> state(service));
      assertEquals(Optional.of(Duration.ofHours(1)), problem.retryAfter());
      assertEquals(List.of(), time.pauses());
    }
  }

  @Test
  void thePatienceIsForAllPauses() {
    try (RawService service = new RawService(RawService.busy("50"))) {
      assertThrows(ProblemException.class, () -> state(service));
      assertEquals(3, service.requests(), "the third pause of 50 s would go beyond 120 s");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "HTTP/1.1 200 O", HALF})
  void asksAgainWhereTheAnswerBreaksOff(String cut) {
    try (RawService service = new RawService(cut, cut, RawService.alive())) {
      assertEquals("up", state(service));
      assertEquals(3, service.requests());
    }
  }

  @Test
  void asksAgainWhereNothingListens() {
    URI address;
    try (RawService service = new RawService(RawService.alive())) {
      address = service.address();
    }
    assertThrows(NoAnswerException.class, () -> state(client(address, time, 1)));
    assertEquals(4, time.pauses().size());
  }

  @Test
  void doesNotAskAgainWhatIsLateOrUnreadable() {
    try (RawService service = new RawService(RawService.answer("200 OK", "", "{\"state\": "))) {
      assertThrows(NoAnswerException.class, () -> state(service));
      assertEquals(1, service.requests());
    }
    try (StubService service = StubService.silent()) {
      FillplaneClient client =
          FillplaneClient.at(service.address())
              .readTimeout(Duration.ofMillis(50))
              .retries(FIVE)
              .time(time, 1)
              .build();
      assertThrows(NoAnswerException.class, () -> state(client));
      assertEquals(List.of(), time.pauses());
    }
  }

  @Test
  void asksOnceWhereToldTo() {
    try (RawService service = new RawService(RawService.busy("0"), RawService.alive())) {
      FillplaneClient client =
          FillplaneClient.at(service.address()).retries(Retries.none()).time(time, 1).build();
      assertThrows(ProblemException.class, () -> state(client));
      assertEquals(1, service.requests());
    }
  }

  @Test
  void endsWhereItsThreadIsInterrupted() {
    try (RawService service = new RawService(RawService.busy("1"))) {
      Time interrupting =
          new Time() {
            @Override
            public Instant now() {
              return time.now();
            }

            @Override
            public void pause(Duration length) throws InterruptedException {
              throw new InterruptedException();
            }
          };
      FillplaneClient client = client(service.address(), interrupting, 1);
      var failure = assertThrows(NoAnswerException.class, () -> state(client));
      assertTrue(Thread.interrupted(), "told on");
      assertInstanceOf(InterruptedException.class, failure.getCause());
      assertEquals(1, service.requests());
    }
  }

  @Test
  void refusesWhatIsNoPatience() {
    Duration second = Duration.ofSeconds(1);
    assertThrows(IllegalArgumentException.class, () -> new Retries(0, second, second, second));
    assertThrows(
        IllegalArgumentException.class, () -> new Retries(1, second, Duration.ZERO, second));
    assertThrows(
        IllegalArgumentException.class, () -> new Retries(1, second.negated(), second, second));
    assertThrows(
        IllegalArgumentException.class, () -> new Retries(1, second, second, second.negated()));
  }

  private String state(RawService service) {
    return state(client(service.address(), time, 1));
  }

  private static String state(FillplaneClient client) {
    return client.call(client.api(HealthApi::new)::getLiveness).getState();
  }

  private static FillplaneClient client(URI address, Time time, long seed) {
    return FillplaneClient.at(address).retries(FIVE).time(time, seed).build();
  }

  private static void between(long least, long most, Duration pause) {
    assertTrue(pause.toMillis() >= least && pause.toMillis() <= most, pause.toString());
  }
}
