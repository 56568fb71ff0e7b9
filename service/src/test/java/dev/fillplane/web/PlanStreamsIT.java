package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Streams of the built jar in a heap that holds no line of 100 MB and no job of many answers. */
@Timeout(600)
class PlanStreamsIT {

  private static final int UNITS = 400;
  private static final int MEGABYTE = 1_000_000;

  private Process service;
  private int port;

  @BeforeEach
  void start() throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    service =
        new ProcessBuilder(
                java,
                "-Xmx128m",
                "-jar",
                System.getProperty("fillplane.jar"),
                "serve",
                "--port",
                "0")
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    BufferedReader out =
        new BufferedReader(new InputStreamReader(service.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    port = Integer.parseInt(line.substring(line.lastIndexOf(':') + 1));
  }

  @AfterEach
  void stop() throws InterruptedException {
    service.destroy();
    assertTrue(service.waitFor(60, TimeUnit.SECONDS), "does not stop");
  }

  @Test
  void manyUnitsAfterALineOf100Megabytes() throws Exception {
    List<ObjectNode> units = InventedUnits.make(UNITS, 11);
    try (StreamCall call = new StreamCall(port)) {
      CompletableFuture<Void> sent = CompletableFuture.runAsync(() -> send(units, call));
      assertTrue(call.line().orElseThrow().startsWith("{\"line\":1,"));
      for (ObjectNode unit : units) {
        String reference = unit.get("reference").toString();
        String answer = call.line().orElseThrow();
        assertTrue(answer.contains("\"reference\":" + reference), answer);
      }
      assertEquals(Optional.empty(), call.line());
      sent.get();
    }
  }

  private static void send(List<ObjectNode> units, StreamCall call) {
    try {
      byte[] megabyte = " ".repeat(MEGABYTE).getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < 100; i++) {
        call.send(megabyte);
      }
      for (ObjectNode unit : units) {
        call.send("\n" + unit);
      }
      call.end();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
