package dev.fillplane.client.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.NoAnswerException;
import dev.fillplane.client.StreamingService;
import dev.fillplane.client.TestClients;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Plans of every unit of a host by a stream, from a stub. */
@Timeout(30)
class StreamRunTest {
  private static final String REFUSED =
      "{\"line\": 2, \"type\": \"urn:fillplane:problem:invalid\", \"title\": \"No\", \"status\": 422,"
          + " \"detail\": \"One thing.\", \"errors\": []}";

  @Test
  void everyPlanGoesToItsUnit() {
    TestHost host = new TestHost(100);
    RunSummary summary = run(host, StreamingService::answerAll);
    assertEquals(
        IntStream.range(0, 100).mapToObj(i -> "unit " + i + ": plan of unit " + i).toList(),
        host.told);
    assertEquals(new RunSummary(100, 0, List.of(), Optional.empty(), false), summary);
    assertEquals(100, host.shown.get(99));
  }

  @Test
  void aBadUnitIsItsOwnTrouble() {
    TestHost host = new TestHost(3);
    RunSummary summary =
        run(
            host,
            connection -> {
              connection.begin();
              connection.answer(1);
              connection.next();
              connection.line(REFUSED);
              connection.answer(1);
              connection.next();
              connection.end();
            });
    assertEquals("unit 1: invalid", host.told.get(1));
    assertEquals("unit 2: plan of unit 2", host.told.get(2));
    assertEquals(1, summary.refused());
    assertTrue(summary.complete());
  }

  @Test
  void anExchangeThatBreaksOffIsTakenUpAgain() {
    TestHost host = new TestHost(50);
    StreamingService.Script breaking =
        connection -> {
          connection.begin();
          connection.answer(7);
          connection.raw("10\r\n{\"uni");
        };
    try (StreamingService service =
        new StreamingService(breaking, breaking, StreamingService::answerAll)) {
      RunSummary summary = new HostRun(TestClients.patient(service.address())).plan(host);
      assertEquals(50, summary.done());
      assertEquals("unit 49: plan of unit 49", host.told.get(49));
      assertTrue(summary.complete());
    }
  }

  @Test
  void aServiceThatIsGoneEndsTheRunAndNothingIsLost() {
    TestHost host = new TestHost(500);
    RunSummary summary =
        run(
            host,
            connection -> {
              connection.begin();
              connection.answer(5);
              connection.next();
            });
    assertInstanceOf(NoAnswerException.class, summary.endedBy().orElseThrow());
    assertEquals(5, summary.done());
    assertEquals(
        IntStream.range(5, host.taken).mapToObj(i -> "unit " + i).toList(), summary.unanswered());
    assertTrue(host.taken > 5 && host.taken < 100, "no more were taken");
  }

  @Test
  void aHostThatStopsGetsWhatIsOnItsWay() {
    TestHost host = new TestHost(1000);
    host.stopAfter = 10;
    RunSummary summary = run(host, StreamingService::answerAll);
    assertTrue(summary.cancelled());
    assertEquals(List.of(), summary.unanswered());
    assertEquals(host.taken, host.told.size());
    assertTrue(host.taken < 100, "taken " + host.taken);
  }

  @Test
  void aSourceThatFailsEndsTheRunAfterTheUnitsBefore() {
    TestHost host = new TestHost(10);
    host.failAt = 6;
    RunSummary summary = run(host, StreamingService::answerAll);
    assertEquals(6, summary.done());
    assertEquals("no unit 6", summary.endedBy().orElseThrow().getMessage());
  }

  private static RunSummary run(TestHost host, StreamingService.Script script) {
    try (StreamingService service = new StreamingService(script)) {
      return new HostRun(TestClients.once(service.address())).plan(host);
    }
  }
}
