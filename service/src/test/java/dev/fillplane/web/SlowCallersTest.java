package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.SocketException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Callers who send or read a byte now and then: cut off, and nobody else waits for them. */
@Timeout(120)
class SlowCallersTest {

  private static final Duration LONG = Duration.ofMinutes(10);

  /** For longer than anybody waits here. */
  private static final int DRIPS = 6_000;

  private static final Duration SHORT = Duration.ofMillis(300);
  private static final String COUNT =
      "{\"units\":\"metric\",\"area\":40,\"thickness\":5,"
          + "\"material\":{\"id\":\"cement-standard-25\"}}";

  private Server server;

  private void serve(Pace pace) {
    server = Server.start(Settings.at("127.0.0.1", 0).withPace(pace));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  /** Sends a letter now and then, for some seconds; whether it was cut off before. */
  private static boolean drip(RawCall call) throws IOException {
    try {
      for (int i = 0; i < DRIPS; i++) {
        call.send("a");
        LockSupport.parkNanos(10_000_000);
      }
      return false;
    } catch (SocketException e) {
      return true;
    }
  }

  private void lightWorkGoesOn() {
    Response answer =
        RunningService.to(server)
            .contentType("application/json")
            .body(COUNT)
            .post("/v1/bag-counts");
    assertEquals(200, answer.statusCode(), answer.asString());
  }

  @Test
  void headersThatDripAreCutOff() throws IOException {
    serve(new Pace(SHORT, LONG, LONG));
    for (String begun : List.of("", "GET /health/live HTTP/1.1\r\nHost: a\r\n\r\n")) {
      try (RawCall call = new RawCall(server.port())) {
        if (!begun.isEmpty()) {
          assertEquals(200, RawCall.status(call.send(begun).answer()));
        }
        call.send("GET /health/live HTTP/1.1\r\nHost: a\r\nX-Long: ");
        assertTrue(drip(call), begun);
      }
    }
  }

  @Test
  void aBodyThatDripsIsToldSo() throws IOException {
    serve(new Pace(LONG, SHORT, LONG));
    for (String path : List.of("/v1/plans", "/v1/bag-counts", "/v1/jobs")) {
      try (RawCall call = new RawCall(server.port())) {
        call.send(RawCall.post(path, 1_000_000) + "{\"units\":");
        Thread dripping = new Thread(() -> assertDoesNotThrow(() -> drip(call)));
        dripping.start();
        String answer = call.answer();
        assertEquals(408, RawCall.status(answer), path + answer);
        assertTrue(answer.contains("urn:fillplane:problem:timed-out"), answer);
      }
    }
    RunningService.until(() -> server.bodies().held() == 0);
  }

  @Test
  void aBodyThatStopsIsToldSo() throws IOException {
    serve(new Pace(LONG, SHORT, LONG));
    try (RawCall call = new RawCall(server.port())) {
      call.send(RawCall.post("/v1/plans", 1_000) + "{\"units\":");
      assertEquals(408, RawCall.status(call.answer()));
    }
  }

  /** More than there are threads. */
  @Test
  void bodiesOnTheirWayHoldNoThread() throws IOException {
    serve(new Pace(LONG, LONG, LONG));
    List<RawCall> calls = new ArrayList<>();
    try {
      for (int i = 0; i < Listening.THREADS + 50; i++) {
        String path = List.of("/v1/plans", "/v1/bag-counts").get(i % 2);
        calls.add(new RawCall(server.port()).send(RawCall.post(path, 1_000) + "{\"units\":"));
      }
      int sent = 9 * calls.size();
      RunningService.until(() -> server.bodies().held() == sent);
      lightWorkGoesOn();
    } finally {
      for (RawCall call : calls) {
        call.vanish();
      }
    }
    RunningService.until(() -> server.bodies().held() == 0);
  }

  /** More than there are places. */
  @Test
  void whoDoesNotReadHoldsNoPlace() throws IOException {
    serve(new Pace(LONG, LONG, LONG));
    ObjectNode fine = RunningService.sample();
    fine.putObject("grid").put("cell", 0.02);
    String body = fine.toString();
    List<RawCall> calls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      RawCall call = new RawCall(server.port(), 4_096);
      calls.add(call.send(RawCall.post("/v1/depth-fields", body.length()) + body));
    }
    RunningService.until(() -> server.lane().ended() == calls.size() && server.lane().idle());
    lightWorkGoesOn();
    for (RawCall call : calls) {
      call.vanish();
    }
  }
}
