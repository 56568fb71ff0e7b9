package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What no proper client sends: refused as a problem document, before any route is looked up. */
class RawHttpTest {

  private static final String ENDS = "Host: localhost\r\nConnection: close\r\n\r\n";

  @Test
  void noHost() throws IOException {
    problem("GET /health/live HTTP/1.1\r\n\r\n", 400, "bad-request");
  }

  @Test
  void pathWithAnEmptySegment() throws IOException {
    problem("GET /v1//plans HTTP/1.1\r\n" + ENDS, 400, "bad-request");
  }

  @Test
  void pathTooLong() throws IOException {
    problem("GET /" + "a".repeat(20_000) + " HTTP/1.1\r\n" + ENDS, 414, "path-too-long");
  }

  @Test
  void headersTooLarge() throws IOException {
    problem(
        "GET / HTTP/1.1\r\nX-Long: " + "a".repeat(20_000) + "\r\n" + ENDS,
        431,
        "headers-too-large");
  }

  @Test
  void chunkWithoutALength() throws IOException {
    problem(
        "POST /v1/plans HTTP/1.1\r\nContent-Type: application/json\r\n"
            + "Transfer-Encoding: chunked\r\n"
            + ENDS
            + "zz\r\n",
        400,
        "bad-request");
  }

  private static void problem(String request, int status, String kind) throws IOException {
    String answer = exchange(request);
    assertTrue(answer.startsWith("HTTP/1.1 " + status + " "), answer);
    assertTrue(answer.contains("Content-Type: application/problem+json"), answer);
    assertTrue(answer.contains("\"type\":\"urn:fillplane:problem:" + kind + "\""), answer);
  }

  private static String exchange(String request) throws IOException {
    try (Socket socket =
        new Socket(RunningService.uri().getHost(), RunningService.uri().getPort())) {
      socket.setSoTimeout(5_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      byte[] answer = new byte[4_000];
      int length = socket.getInputStream().readNBytes(answer, 0, answer.length);
      return new String(answer, 0, length, StandardCharsets.UTF_8);
    }
  }
}
