package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.Javalin;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** An answer that is far larger than what a line takes unread. */
@Timeout(60)
class SendingTest {

  private static final int BYTES = 30_000_000;
  private static final Duration LONG = Duration.ofMinutes(10);

  private final ScheduledExecutorService watch = Watch.start();
  private Javalin server;

  private RawCall ask(Duration time) throws IOException {
    Sending sending = new Sending(new Pace(LONG, LONG, time), watch);
    server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.routes.get(
                  "/",
                  context ->
                      context.future(
                          () ->
                              sending.send(context, "application/octet-stream", new byte[BYTES])));
            });
    server.start("127.0.0.1", 0);
    return new RawCall(server.port(), 4_096).send("GET / HTTP/1.1\r\nHost: a\r\n\r\n");
  }

  @AfterEach
  void stop() {
    server.stop();
    watch.shutdownNow();
  }

  /** Longer ago than the bytes add. */
  @Test
  void whoseTimeIsOverIsCutOff() throws IOException {
    try (RawCall call = ask(Duration.ofHours(-2))) {
      assertTrue(call.cutOff());
    }
  }

  @Test
  void whoHasTimeGetsAll() throws IOException {
    try (RawCall call = ask(LONG)) {
      assertFalse(call.cutOff());
    }
  }
}
