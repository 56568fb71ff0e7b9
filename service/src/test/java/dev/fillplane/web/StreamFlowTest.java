package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.Javalin;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Connector;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** How streams flow, stand still and end, with a planner that stands in for the real one. */
@Timeout(120)
class StreamFlowTest {

  private static final long LONG = 60_000;
  private static final int WIDTH = 4;
  private static final int LARGE = 1_000_000;

  private Javalin server;
  private PlanLines lines;
  private PlanStreams streams;

  private void serve(UnaryOperator<byte[]> planner, long idleMillis) {
    lines = new PlanLines(planner, WIDTH / 2);
    streams = new PlanStreams(lines, idleMillis);
    server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              Problems.handle(config);
              RequestIds.handle(config);
              config.routes.post(PlanStreams.PATH, streams::handle);
            });
    server.start("127.0.0.1", 0);
  }

  @AfterEach
  void stop() {
    streams.close();
    server.stop();
    lines.close();
  }

  private StreamCall call(String... headers) throws IOException {
    return new StreamCall(server.port(), headers);
  }

  // --- flow

  @Test
  void anAnswerComesBeforeTheNextLineIsSent() throws IOException {
    serve(line -> line, LONG);
    for (String encoding : List.of("identity", "gzip")) {
      try (StreamCall call = call("Accept-Encoding: " + encoding)) {
        for (int i = 0; i < 20; i++) {
          call.send("line " + i + "\n");
          assertEquals("line " + i, call.line().orElseThrow(), encoding);
        }
        assertEquals(List.of(), call.end().lines());
        assertEquals(encoding.equals("gzip"), call.head().contains("Content-Encoding: gzip"));
        assertTrue(call.head().startsWith("HTTP/1.1 200 "), call.head());
        assertTrue(call.head().contains("Content-Type: application/x-ndjson"), call.head());
      }
    }
  }

  /** The first line is ready only after the third, so that there must be workers for both. */
  @Test
  void linesArePlannedSideBySideAndAnsweredInOrder() throws IOException {
    CountDownLatch third = new CountDownLatch(1);
    Set<String> workers = Collections.newSetFromMap(new ConcurrentHashMap<>());
    serve(
        line -> {
          workers.add(Thread.currentThread().getName());
          if (line[0] == '1') {
            await(third);
          } else if (line[0] == '3') {
            third.countDown();
          }
          return line;
        },
        LONG);
    try (StreamCall call = call()) {
      assertEquals(List.of("1", "2", "3", "4"), call.send("1\n2\n3\n4\n").end().lines());
    }
    assertEquals(2, workers.size(), workers.toString());
  }

  @Test
  void nothingIsAnsweredByNothing() throws IOException {
    serve(line -> line, LONG);
    try (StreamCall call = call("Accept-Encoding: gzip")) {
      assertEquals(List.of(), call.send("\n\n \r\n").end().lines());
      assertTrue(call.head().startsWith("HTTP/1.1 200 "), call.head());
    }
  }

  /** A fault of the service in one line does not touch the others. */
  @Test
  void aLineThatFailsIsAProblem() throws IOException {
    serve(
        line -> {
          if (line[0] == '2') {
            throw new StackOverflowError("a test");
          }
          return line;
        },
        LONG);
    try (StreamCall call = call("X-Request-Id: many-1")) {
      List<String> answers = call.send("1\n2\n3").end().lines();
      assertEquals(List.of("1", "3"), List.of(answers.get(0), answers.get(2)));
      problem(answers.get(1), 2, 500, "failed");
      assertTrue(answers.get(1).contains("\"requestId\":\"many-1\""), answers.get(1));
    }
  }

  // --- standing still and ending

  /** All lines fit on the way to the service, but not all answers on the way back. */
  @Test
  void whoDoesNotReadStopsTheWorkAndIsGivenUp() throws IOException {
    AtomicInteger planned = new AtomicInteger();
    serve(line -> counted(planned), 500);
    try (StreamCall call = call()) {
      call.send("x\n".repeat(1_000)).end();
      RunningService.until(() -> planned.get() > 0);
      awaitNoStream();
      int done = planned.get();
      assertTrue(done < 200, "planned " + done);
      assertThrows(IOException.class, call::lines);
      assertEquals(done, planned.get());
    }
  }

  @Test
  void whoReadsAgainGetsEverything() throws IOException {
    AtomicInteger planned = new AtomicInteger();
    serve(line -> counted(planned), LONG);
    try (StreamCall call = call()) {
      call.send("x\n".repeat(40)).end();
      assertEquals(40, call.lines().size());
      assertEquals(40, planned.get());
    }
  }

  @Test
  void whoIsGoneEndsTheWork() throws IOException {
    AtomicInteger planned = new AtomicInteger();
    serve(line -> counted(planned), LONG);
    StreamCall call = call();
    call.send("x\n".repeat(1_000));
    call.line();
    call.close();
    awaitNoStream();
    assertTrue(planned.get() < 200, "planned " + planned.get());
  }

  @Test
  void whoSendsNothingMoreIsToldTheLine() throws IOException {
    serve(line -> line, 500);
    try (StreamCall call = call()) {
      List<String> answers = call.send("1\n\n3\nhalf a li").lines();
      assertEquals(3, answers.size(), answers.toString());
      problem(answers.get(2), 4, 408, "timed-out");
    }
    try (StreamCall call = call()) {
      String problem = call.lines().get(0);
      assertTrue(call.head().startsWith("HTTP/1.1 408 "), call.head());
      assertTrue(call.head().contains("application/problem+json"), call.head());
      assertTrue(problem.contains("urn:fillplane:problem:timed-out"), problem);
    }
  }

  @Test
  void aBodyThatBreaksOffIsToldTheLine() throws IOException {
    serve(line -> line, LONG);
    try (StreamCall call = call()) {
      List<String> answers = call.send("1\n2\n").breakOff().lines();
      assertEquals(3, answers.size(), answers.toString());
      problem(answers.get(2), 3, 400, "bad-request");
    }
  }

  /** Otherwise a caller who thinks for ten seconds would be cut off like an idle connection. */
  @Test
  void onlyAStreamMayStandStillForLong() throws IOException {
    serve(line -> Long.toString(idleMillis()).getBytes(StandardCharsets.UTF_8), LONG);
    long usual = server.jettyServer().server().getConnectors()[0].getIdleTimeout();
    try (StreamCall call = call()) {
      assertEquals(List.of(Long.toString(LONG)), call.send("x").end().lines());
      awaitNoStream();
      assertEquals(usual, idleMillis());
    }
  }

  @Test
  void tooManyStreams() throws IOException {
    serve(line -> line, LONG);
    StreamCall[] calls = new StreamCall[PlanStreams.MOST];
    for (int i = 0; i < calls.length; i++) {
      calls[i] = call();
      calls[i].send("x\n").line();
    }
    try (StreamCall more = call()) {
      assertTrue(more.lines().get(0).contains("urn:fillplane:problem:busy"));
      assertTrue(more.head().startsWith("HTTP/1.1 503 "), more.head());
      assertTrue(more.head().contains("Retry-After: 10"), more.head());
    }
    assertEquals(List.of(), calls[0].end().lines());
    awaitStreams(calls.length - 1);
    try (StreamCall again = call()) {
      assertEquals(List.of("x"), again.send("x").end().lines());
    }
    for (StreamCall call : calls) {
      call.close();
    }
  }

  @Test
  void aServiceThatStopsAnswersWhatItHasRead() throws IOException {
    CountDownLatch stopping = new CountDownLatch(1);
    CountDownLatch both = new CountDownLatch(2);
    serve(
        line -> {
          both.countDown();
          await(stopping);
          return line;
        },
        LONG);
    try (StreamCall call = call()) {
      call.send("1\n2\n");
      await(both);
      streams.close();
      stopping.countDown();
      List<String> answers = call.lines();
      assertEquals(List.of("1", "2"), answers.subList(0, 2));
      problem(answers.get(2), 3, 503, "busy");
      assertTrue(answers.get(2).contains("begin again from this line"), answers.get(2));
    }
    try (StreamCall late = call()) {
      late.lines();
      assertTrue(late.head().startsWith("HTTP/1.1 503 "), late.head());
    }
  }

  private static byte[] counted(AtomicInteger planned) {
    planned.incrementAndGet();
    return "y".repeat(LARGE).getBytes(StandardCharsets.UTF_8);
  }

  private long idleMillis() {
    Connector connector = server.jettyServer().server().getConnectors()[0];
    return connector.getConnectedEndPoints().stream()
        .mapToLong(EndPoint::getIdleTimeout)
        .max()
        .orElseThrow();
  }

  private void awaitNoStream() {
    awaitStreams(0);
  }

  private void awaitStreams(int count) {
    RunningService.until(() -> streams.open() == count);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void problem(String line, int number, int status, String kind) {
    String told = "{\"line\":" + number + ",\"type\":\"urn:fillplane:problem:" + kind + "\"";
    assertTrue(line.startsWith(told), line);
    assertTrue(line.contains("\"status\":" + status), line);
  }
}
