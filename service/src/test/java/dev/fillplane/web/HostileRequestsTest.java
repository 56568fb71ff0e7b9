package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that nobody sends by mistake: each is refused as what it is, and tells nothing. */
@Timeout(120)
class HostileRequestsTest {

  private static final String HOST = "Host: 127.0.0.1\r\n";
  private static final String HEALTH = "GET /health/live HTTP/1.1\r\n" + HOST;

  private static String ask(String request) throws IOException {
    try (RawCall call = RawCall.toTheService()) {
      return call.send(request).answer();
    }
  }

  private static void refused(int status, String request) throws IOException {
    String answer = ask(request);
    assertEquals(status, RawCall.status(answer), request + " -> " + answer);
    assertTrue(answer.contains("application/problem+json"), answer);
  }

  // --- where a request ends

  /** Each could be read as one request or as two; none is read at all. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Content-Length: 4\r\nTransfer-Encoding: chunked\r\n",
        "Transfer-Encoding: chunked\r\nContent-Length: 4\r\n",
        "Content-Length: 4\r\nContent-Length: 5\r\n",
        "Content-Length: 4, 5\r\n",
        "Content-Length: -4\r\n",
        "Content-Length: +4\r\n",
        "Content-Length: 0x4\r\n",
        "Content-Length: 99999999999999999999\r\n",
        "Transfer-Encoding: chunked, identity\r\n",
        "Transfer-Encoding: xchunked\r\n",
        "Transfer-Encoding : chunked\r\n",
        "Transfer-Encoding: chunked\r\nTransfer-Encoding: identity\r\n",
        "Content-Length: 4\r\n folded\r\n"
      })
  void whereABodyEndsIsNeverGuessed(String length) throws IOException {
    refused(
        400,
        "POST /v1/plans HTTP/1.1\r\n"
            + HOST
            + "Content-Type: application/json\r\n"
            + length
            + "\r\n0\r\n\r\n");
  }

  @Test
  void whatIsBehindABodyIsTheNextRequest() throws IOException {
    try (RawCall call = RawCall.toTheService()) {
      call.send(RawCall.post("/v1/plans", 2) + "{}GARBAGE\r\n\r\n");
      assertEquals(List.of(422, 400), call.statuses(2));
      assertTrue(call.closed());
    }
  }

  @Test
  void aBodyThatIsShorterThanAnnounced() throws IOException {
    for (String path : List.of("/v1/plans", "/v1/bag-counts", "/v1/jobs")) {
      try (RawCall call = RawCall.toTheService()) {
        String answer = call.send(RawCall.post(path, 100) + "{}").halfClose().answer();
        assertEquals(400, RawCall.status(answer), path + answer);
        assertTrue(answer.contains("did not arrive whole"), answer);
      }
    }
  }

  @Test
  void chunksWithoutEndAreCutAtTheLimit() throws IOException {
    try (Server small = Server.start(Settings.at("127.0.0.1", 0).withBodyBytes(10_000));
        RawCall call = new RawCall(small.port())) {
      call.send(
          "POST /v1/plans HTTP/1.1\r\n"
              + HOST
              + "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n");
      for (int i = 0; i < 11; i++) {
        call.send("400\r\n" + " ".repeat(1024) + "\r\n");
      }
      assertEquals(413, RawCall.status(call.answer()));
      assertTrue(call.closed());
    }
  }

  // --- what is in it

  @Test
  void aBombIsNotUnpacked() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(bomb)) {
      out.write(new byte[50_000_000]);
    }
    for (String path : List.of("/v1/plans", "/v1/bag-counts", "/v1/plan-streams", "/v1/jobs")) {
      String head = RawCall.post(path, bomb.size()).replace("\r\n\r\n", "\r\n");
      head += "Content-Encoding: gzip\r\n\r\n";
      if (path.endsWith("streams")) {
        head = head.replace("application/json", "application/x-ndjson");
      }
      refused(415, head + bomb.toString(StandardCharsets.ISO_8859_1));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1/plans", "/v1/bag-counts", "/v1/jobs", "/v1/comparisons"})
  void jsonThatNestsOrCountsWithoutEnd(String path) throws IOException {
    for (String body :
        List.of(
            "[".repeat(10_000),
            "{\"a\":".repeat(10_000),
            "{\"area\":" + "9".repeat(10_000) + "}",
            "{\"area\":1." + "0".repeat(10_000) + "1}",
            "{\"area\":1,\"area\":2}",
            "{\"area\":1e99999999999}",
            "\u0000".repeat(100),
            "\u00ff\u00fe{\u0000}\u0000")) {
      String answer = ask(RawCall.post(path, body.length()) + body);
      int status = RawCall.status(answer);
      assertTrue(status == 400 || status == 422, path + " " + status + answer);
    }
  }

  // --- what is in its headers

  @ParameterizedTest
  @ValueSource(
      strings = {
        "X-Request-Id: a\rSet-Cookie: b\r\n",
        "X-Request-Id: a\u0000b\r\n",
        "X-Request-Id: a\u000bb\r\n",
        "X-Request-Id\r\n",
        ": nothing\r\n",
        "X Request Id: a\r\n",
        "\u00e9: a\r\n",
        "Host: other\r\n"
      })
  void headersThatAreNone(String header) throws IOException {
    String answer = ask(HEALTH + header + "\r\n");
    assertEquals(400, RawCall.status(answer), answer);
    assertFalse(answer.contains("Set-Cookie"), answer);
  }

  /** Ids that are no plain words are not told back, wherever they come from. */
  @Test
  void nothingOfTheCallerGetsIntoAHeader() throws IOException {
    for (String id : List.of("a b", "a;b", "<script>", "%0d%0aSet-Cookie:x", "a".repeat(65))) {
      String answer = ask(HEALTH + "X-Request-Id: " + id + "\r\n\r\n");
      assertEquals(200, RawCall.status(answer));
      assertFalse(answer.contains(id), answer);
    }
    for (String path :
        List.of("/v1/jobs/a%0d%0aSet-Cookie:%20x", "/v1/tolerances/%0aSet-Cookie:x?units=%0d%0a")) {
      String answer = ask("GET " + path + " HTTP/1.1\r\n" + HOST + "\r\n");
      int status = RawCall.status(answer);
      assertTrue(status == 400 || status == 404, answer);
      assertFalse(answer.toLowerCase(Locale.ROOT).contains("\nset-cookie"), answer);
    }
  }

  @Test
  void manyHeaders() throws IOException {
    refused(431, HEALTH + "X-Small: a\r\n".repeat(2_000) + "\r\n");
  }

  // --- what it asks for

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/..",
        "/../etc/passwd",
        "/page/../../etc/passwd",
        "/page/%2e%2e/%2e%2e/etc/passwd",
        "/page/..%2f..%2fetc/passwd",
        "/page/%2e%2e%2fetc",
        "/%2e%2e",
        "//etc/passwd",
        "///",
        "/page/%00",
        "/page/index.html%00.css",
        "/docs;a=b/../..",
        "/page/..;/",
        "/v1/jobs/..%2f..",
        "/v1/jobs/%00",
        "/v1/jobs/a%2fplans",
        "/v1/jobs//plans",
        "/v1/jobs/..;/x",
        "/\\..\\windows",
        "/%5c..%5c",
        "/%c0%ae%c0%ae/",
        "/%zz",
        "/%",
        "/page/./x",
        "/v1/tolerances/..%2f",
        "http://elsewhere/page",
        "*",
        "/v1/%70lains"
      })
  void pathsLeadNowhereElse(String path) throws IOException {
    String answer = ask("GET " + path + " HTTP/1.1\r\n" + HOST + "\r\n");
    int status = RawCall.status(answer);
    assertTrue(List.of(400, 403, 404, 405).contains(status), path + " -> " + answer);
    assertFalse(answer.contains("root:"), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"TRACE", "CONNECT", "PATCH", "PUT", "DELETE", "OPTIONS", "PROPFIND", "get"})
  void methodsThatNoPathTakes(String method) throws IOException {
    for (String path : List.of("/v1/plans", "/health/live", "/page/nothing.js", "/")) {
      String answer = ask(method + " " + path + " HTTP/1.1\r\n" + HOST + "X-Secret: s3\r\n\r\n");
      int status = RawCall.status(answer);
      assertTrue(status >= 400 && status < 500, method + path + " -> " + answer);
      assertFalse(answer.contains("s3"), answer);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET / HTTP/3.0\r\n",
        "GET / HTTP/0.1\r\n",
        "GET /\r\n",
        "GET\r\n",
        "PRI * HTTP/2.0\r\n",
        "GET / FTP/1.1\r\n",
        "\u0016\u0003\u0001\u0002\u0000\u0001\u0000\u0001\u00fc\u0003\u0003\r\n"
      })
  void otherProtocols(String line) throws IOException {
    String answer = ask(line + HOST + "\r\n");
    int status = RawCall.status(answer);
    assertTrue(status == 0 || (status >= 400 && status < 500), line + " -> " + answer);
  }

  @Test
  void noOtherProtocolIsSpokenOnRequest() throws IOException {
    for (String upgrade : List.of("websocket", "h2c")) {
      for (String path : List.of("/", "/v1/plans", "/v1/plan-streams")) {
        String answer =
            ask(
                "GET "
                    + path
                    + " HTTP/1.1\r\n"
                    + HOST
                    + "Connection: Upgrade\r\nUpgrade: "
                    + upgrade
                    + "\r\nSec-WebSocket-Version: 13\r\n"
                    + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n");
        int status = RawCall.status(answer);
        assertTrue(status == 200 || status == 405, upgrade + path + " -> " + answer);
        assertFalse(answer.contains("Set-Cookie"), answer);
      }
    }
  }

  // --- what it does with its connection

  @Test
  void manyRequestsAtOnceAreAnsweredInOrder() throws IOException {
    try (RawCall call = RawCall.toTheService()) {
      String missing = "GET /nothing HTTP/1.1\r\n" + HOST + "\r\n";
      call.send((HEALTH + "\r\n" + missing).repeat(50));
      List<Integer> expected = new ArrayList<>();
      for (int i = 0; i < 50; i++) {
        Collections.addAll(expected, 200, 404);
      }
      assertEquals(expected, call.statuses(100));
    }
  }

  @Test
  void whoSendsNothingMoreIsAnswered() throws IOException {
    String body = RunningService.sample().toString();
    try (RawCall call = RawCall.toTheService()) {
      String answer =
          call.send(RawCall.post("/v1/plans", body.length()) + body).halfClose().answer();
      assertEquals(200, RawCall.status(answer), answer);
    }
  }

  @Test
  void whoWaitsToBeToldToGoOnIsTold() throws IOException {
    String body = RunningService.sample().toString();
    String head = RawCall.post("/v1/plans", body.length()).replace("\r\n\r\n", "\r\n");
    try (RawCall call = RawCall.toTheService()) {
      call.send(head + "Expect: 100-continue\r\n\r\n");
      assertEquals(100, RawCall.status(call.answer()));
      assertEquals(200, RawCall.status(call.send(body).answer()));
    }
    refused(400, head + "Expect: the-unexpected\r\n\r\n");
  }

  @Test
  void fiveHundredIdleConnections() throws IOException {
    List<RawCall> idle = new ArrayList<>();
    try {
      for (int i = 0; i < 500; i++) {
        idle.add(RawCall.toTheService());
      }
      assertEquals(200, RunningService.given().get("/health/ready").statusCode());
      assertEquals(200, RunningService.post("/v1/plans", RunningService.sample()).statusCode());
    } finally {
      for (RawCall call : idle) {
        call.close();
      }
    }
  }

  /** Right after the request, and in the middle of the answer. */
  @Test
  void whoVanishesLeavesNothingBehind() throws IOException {
    String body = RunningService.sample().toString();
    try (Server server = Server.start(Settings.at("127.0.0.1", 0))) {
      for (int i = 0; i < 20; i++) {
        RawCall call = new RawCall(server.port());
        call.send(RawCall.post("/v1/depth-maps", body.length()) + body);
        if (i % 2 == 0) {
          assertEquals(200, RawCall.status(call.answer().substring(0, 50)));
        }
        call.vanish();
      }
      int room = Capacity.usual().places() + Capacity.usual().waiting();
      while (server.lane().room() < room || server.bodies().held() > 0) {
        Thread.onSpinWait();
      }
      assertEquals(200, RunningService.given(server).get("/health/ready").statusCode());
    }
  }
}
