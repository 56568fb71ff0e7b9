package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.generated.model.PlanRequest;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Streams of plans against services that answer, refuse, break off and stand still. */
@Timeout(30)
class PlanStreamTest {
  private static final String BAD_LINE =
      """
      {"line": 2, "type": "urn:fillplane:problem:invalid", "title": "Not valid", "status": 422,
       "detail": "One thing.", "errors": [{"code": "missing", "pointer": "#/rooms", "detail": "None."}]}
      """
          .replace("\n", "");
  private static final String ENDING =
      "{\"line\": 3, \"type\": \"urn:fillplane:problem:%s\", \"status\": %d, \"title\": \"x\","
          + " \"detail\": \"Begin again from this line.\", \"errors\": []}";

  private final VirtualTime time = new VirtualTime("2026-03-01T08:00:00Z");

  @Test
  void answersInOrder() {
    try (StreamingService service = new StreamingService(StreamingService::answerAll)) {
      assertEquals(references(200), planned(service, 200));
      String head = service.heads().get(0);
      assertTrue(head.startsWith("POST /v1/plan-streams HTTP/1.1\r\n"), head);
      assertTrue(head.contains("\r\nAuthorization: Bearer fp_1_x\r\n"), head);
      assertTrue(head.contains("\r\nContent-Type: application/x-ndjson\r\n"), head);
      assertTrue(head.contains("\r\nHost: localhost:"), head);
    }
  }

  /** The second request is not known before the first answer: both ways at the same time. */
  @Test
  void anAnswerComesBeforeTheRequestIsOver() {
    try (StreamingService service = new StreamingService(StreamingService::answerAll)) {
      AtomicInteger taken = new AtomicInteger();
      Iterator<PlanRequest> hesitant =
          IntStream.range(0, 5).mapToObj(i -> afterAnswer(i, taken)).iterator();
      try (PlanStream stream = client(service).streamPlans(hesitant)) {
        while (stream.hasNext()) {
          assertEquals("unit " + taken.get(), stream.next().plan().getReference());
          synchronized (taken) {
            taken.incrementAndGet();
            taken.notifyAll();
          }
        }
      }
      assertEquals(5, taken.get());
    }
  }

  @Test
  void aBadLineIsAProblemOfItsOwn() {
    StreamingService.Script second =
        connection -> {
          connection.begin();
          connection.answer(1);
          connection.next();
          connection.line(BAD_LINE);
          connection.answer(Integer.MAX_VALUE);
          connection.end();
        };
    try (StreamingService service = new StreamingService(second);
        PlanStream stream = client(service).streamPlans(requests(3))) {
      assertEquals("unit 0", stream.next().plan().getReference());
      PlanLine bad = stream.next();
      assertEquals(2, bad.line());
      ProblemException problem = assertThrows(ProblemException.class, bad::plan);
      assertEquals(Optional.of("invalid"), problem.kind());
      assertEquals(List.of(new Problem("missing", "#/rooms", "None.")), problem.errors());
      assertEquals("unit 2", stream.next().plan().getReference());
      assertFalse(stream.hasNext());
      assertThrows(NoSuchElementException.class, stream::next);
    }
  }

  @Test
  void takesNoMoreRequestsThanItMayBeAhead() {
    AtomicInteger taken = new AtomicInteger();
    AtomicInteger furthest = new AtomicInteger();
    Iterator<PlanRequest> watched =
        IntStream.range(0, 300)
            .peek(i -> furthest.accumulateAndGet(i + 1 - taken.get(), Math::max))
            .mapToObj(PlanStreamTest::request)
            .iterator();
    try (StreamingService service = new StreamingService(StreamingService::answerAll);
        PlanStream stream = client(service).streamPlans(watched)) {
      while (stream.hasNext()) {
        taken.incrementAndGet();
        stream.next();
      }
      assertEquals(300, taken.get());
      assertTrue(furthest.get() <= PlanStream.AHEAD + 1, "ahead by " + furthest);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "10\r\n{\"units\":\"met", "0\r\n\r\n", "ffff\r\n{\"un", "x\r\n"})
  void goesOnWhereAnExchangeBrokeOff(String cut) {
    StreamingService.Script breaking =
        connection -> {
          connection.begin();
          connection.answer(3);
          connection.raw(cut);
        };
    try (StreamingService service =
        new StreamingService(breaking, breaking, StreamingService::answerAll)) {
      assertEquals(references(40), planned(service, 40));
      assertEquals(3, service.heads().size());
      assertEquals(2, time.pauses().size());
    }
  }

  @ParameterizedTest
  @CsvSource({"busy, 503", "timed-out, 408", "too-many-requests, 429", "bad-request, 400"})
  void beginsAgainWhereTheServiceSaysSo(String kind, int status) {
    StreamingService.Script stopping =
        connection -> {
          connection.begin();
          connection.answer(2);
          connection.line(ENDING.formatted(kind, status));
          connection.end();
        };
    try (StreamingService service = new StreamingService(stopping, StreamingService::answerAll)) {
      assertEquals(references(10), planned(service, 10));
    }
  }

  /** More often than there are attempts: nothing was asked that could have been answered. */
  @Test
  void aSlowSourceIsNoTrouble() {
    CountDownLatch tired = new CountDownLatch(8);
    StreamingService.Script patient =
        connection -> {
          tired.countDown();
          connection.begin();
          if (tired.getCount() > 0) {
            connection.line(ENDING.formatted("timed-out", 408));
          } else {
            connection.answer(Integer.MAX_VALUE);
          }
          connection.end();
        };
    Iterator<PlanRequest> slow =
        IntStream.range(0, 2).peek(i -> await(tired)).mapToObj(PlanStreamTest::request).iterator();
    try (StreamingService service = new StreamingService(patient);
        PlanStream stream = client(service).streamPlans(slow)) {
      assertEquals("unit 0", stream.next().plan().getReference());
      assertEquals("unit 1", stream.next().plan().getReference());
      assertEquals(List.of(), time.pauses());
    }
  }

  /** The service went away after the last answer; nobody asks it again. */
  @Test
  void whatIsAllAnsweredIsOver() {
    StreamingService.Script gone =
        connection -> {
          connection.begin();
          connection.answer(Integer.MAX_VALUE);
        };
    try (StreamingService service = new StreamingService(gone)) {
      assertEquals(references(3), planned(service, 3));
      assertEquals(1, service.heads().size());
    }
  }

  @Test
  void waitsForABusyService() {
    StreamingService.Script busy = connection -> connection.raw(RawService.busy("10"));
    try (StreamingService service = new StreamingService(busy, StreamingService::answerAll)) {
      assertEquals(references(3), planned(service, 3));
      assertTrue(time.pauses().get(0).toSeconds() >= 10, time.pauses().toString());
    }
  }

  @Test
  void tellsWhenItIsRefused() {
    String body = "{\"type\": \"urn:fillplane:problem:no-key\", \"title\": \"Who?\"}";
    StreamingService.Script refusing =
        connection -> connection.raw(RawService.answer("401 Unauthorized", "", body));
    try (StreamingService service = new StreamingService(refusing);
        PlanStream stream = client(service).streamPlans(requests(3))) {
      ProblemException problem = assertThrows(ProblemException.class, stream::hasNext);
      assertEquals(401, problem.status());
      assertEquals(Optional.of("no-key"), problem.kind());
      assertFalse(stream.hasNext(), "over");
      assertEquals(1, service.heads().size());
    }
  }

  @Test
  void givesUpOnAServiceThatAnswersNothing() {
    StreamingService.Script empty =
        connection -> {
          connection.begin();
          connection.end();
        };
    try (StreamingService service = new StreamingService(empty);
        PlanStream stream = client(service).streamPlans(requests(3))) {
      assertThrows(NoAnswerException.class, stream::hasNext);
      assertEquals(Retries.usual().attempts(), service.heads().size());
    }
  }

  @Test
  void tellsWhenAnAnswerIsLate() {
    StreamingService.Script silent =
        connection -> {
          connection.begin();
          connection.readOn();
          connection.next();
        };
    try (StreamingService service = new StreamingService(silent)) {
      FillplaneClient hasty =
          FillplaneClient.at(service.address())
              .readTimeout(Duration.ofMillis(50))
              .time(time, 1)
              .build();
      try (PlanStream stream = hasty.streamPlans(requests(3))) {
        var late = assertThrows(NoAnswerException.class, stream::hasNext);
        assertInstanceOf(HttpTimeoutException.class, late.getCause());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SSH-2.0-x\r\n\r\n",
        "HTTP/1.1 200 OK\r\nno header\r\n\r\n",
        "HTTP/1.1 200 OK\r\n : of no name\r\n\r\n",
        "HTTP/1.1 200 OK\r\nContent-Length: many\r\n\r\n",
        "HTTP/1.1 200 OK\r\nContent-Length: -1\r\n\r\n",
        "{}\n"
      })
  void tellsWhenItIsNotHttp(String bytes) {
    try (StreamingService service = new StreamingService(connection -> connection.raw(bytes));
        PlanStream stream = client(service).streamPlans(requests(1))) {
      assertThrows(NoAnswerException.class, stream::hasNext);
    }
  }

  @Test
  void answersToNothingAndNonsenseAreNoPlans() {
    StreamingService.Script nonsense =
        connection -> {
          connection.begin();
          connection.next();
          connection.line("{\"units\":");
        };
    try (StreamingService service = new StreamingService(nonsense);
        PlanStream stream = client(service).streamPlans(requests(1))) {
      assertThrows(NoAnswerException.class, stream::hasNext);
      assertEquals(1, service.heads().size());
    }
  }

  /** What was asked before is answered before the fault of the source is thrown. */
  @Test
  void aFaultOfTheSourceComesAfterTheAnswersBefore() {
    Iterator<PlanRequest> faulty =
        IntStream.range(0, 9).peek(i -> failAt(i, 4)).mapToObj(PlanStreamTest::request).iterator();
    try (StreamingService service = new StreamingService(StreamingService::answerAll);
        PlanStream stream = client(service).streamPlans(faulty)) {
      for (int i = 0; i < 4; i++) {
        assertEquals("unit " + i, stream.next().plan().getReference());
      }
      assertEquals("no 4", assertThrows(IllegalStateException.class, stream::hasNext).getMessage());
    }
  }

  @Test
  void closingEndsTheRequest() throws Exception {
    StreamingService.Script one =
        connection -> {
          connection.begin();
          connection.answer(1);
          connection.readOn();
          connection.next();
        };
    try (StreamingService service = new StreamingService(one)) {
      PlanStream stream = client(service).streamPlans(requests(1000));
      assertEquals("unit 0", stream.next().plan().getReference());
      stream.close();
      service.awaitThatTheClientLeft();
      assertFalse(stream.hasNext());
    }
  }

  @Test
  void anotherThreadMayCloseIt() throws Exception {
    try (StreamingService service =
        new StreamingService(
            connection -> {
              connection.begin();
              connection.readOn();
              connection.next();
            })) {
      PlanStream stream = client(service).streamPlans(requests(1000));
      List<Boolean> more = new ArrayList<>();
      Thread reading = new Thread(() -> more.add(stream.hasNext()));
      reading.start();
      stream.close();
      reading.join();
      assertEquals(List.of(false), more);
    }
  }

  @Test
  void readsBodiesOfALengthAndUntilTheEnd() {
    String plan = "{\"units\":\"metric\",\"reference\":\"unit 0\"}\n";
    String length = RawService.answer("200 OK", "", "\n" + plan + "\n");
    String end = "HTTP/1.0 200 OK\r\n\r\n" + plan;
    String later = "HTTP/1.1 102 Processing\r\n\r\nHTTP/1.1 200 OK\r\n\r\n" + plan;
    for (String answer : List.of(length, end, later)) {
      try (StreamingService service =
          new StreamingService(
              connection -> {
                connection.readOn();
                connection.raw(answer);
              })) {
        assertEquals(references(1), planned(service, 1), answer);
      }
    }
  }

  private List<String> planned(StreamingService service, int count) {
    List<String> references = new ArrayList<>();
    try (PlanStream stream = client(service).streamPlans(requests(count))) {
      while (stream.hasNext()) {
        PlanLine line = stream.next();
        references.add(line.plan().getReference());
        assertEquals(references.size(), line.line());
      }
    }
    return references;
  }

  private FillplaneClient client(StreamingService service) {
    return FillplaneClient.at(service.address()).apiKey("fp_1_x").time(time, 1).build();
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static PlanRequest afterAnswer(int number, AtomicInteger taken) {
    synchronized (taken) {
      try {
        while (taken.get() < number) {
          taken.wait();
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
    return request(number);
  }

  private static void failAt(int number, int bad) {
    if (number == bad) {
      throw new IllegalStateException("no " + number);
    }
  }

  private static Iterator<PlanRequest> requests(int count) {
    return IntStream.range(0, count).mapToObj(PlanStreamTest::request).iterator();
  }

  private static PlanRequest request(int number) {
    return new PlanRequest().reference("unit " + number);
  }

  private static List<String> references(int count) {
    return IntStream.range(0, count).mapToObj(i -> "unit " + i).toList();
  }
}
