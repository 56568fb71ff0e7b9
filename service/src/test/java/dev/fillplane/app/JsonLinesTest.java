package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.LoggingEvent;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.web.watch.BareFault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slf4j.event.KeyValuePair;

/** How a line of the log is written. */
class JsonLinesTest {

  private static final LoggerContext CONTEXT = new LoggerContext();

  @Test
  void anEventIsOneLine() throws IOException {
    LoggingEvent event = event("a \"message\"\nof {} lines", null, 2);
    event.addKeyValuePair(new KeyValuePair("status", 200));
    event.addKeyValuePair(new KeyValuePair("ms", 12.5));
    event.addKeyValuePair(new KeyValuePair("route", "/v1/plans"));
    String line = line(LogFormat.JSON, event);
    assertEquals(1, line.lines().count(), line);
    assertEquals(
        "{\"time\":\"2026-03-01T10:00:00.120Z\",\"level\":\"WARN\",\"logger\":\"a.logger\","
            + "\"message\":\"a \\\"message\\\"\\nof 2 lines\",\"status\":200,\"ms\":12.5,"
            + "\"route\":\"/v1/plans\",\"job\":\"7\"}\n",
        line);
  }

  /** A fault tells its kind and its place, and not its words. */
  @Test
  void aFaultTellsItsPlaceOnly() throws IOException {
    Exception cause = new NumberFormatException("For input string: \"Villa Wisteria\"");
    Exception fault = new IllegalStateException("of Villa Wisteria", cause);
    for (LogFormat format : LogFormat.values()) {
      String line = line(format, event("it failed", BareFault.of(fault)));
      assertTrue(line.contains("java.lang.IllegalStateException"), line);
      assertTrue(line.contains("java.lang.NumberFormatException"), line);
      assertTrue(line.contains("JsonLinesTest.aFaultTellsItsPlaceOnly"), line);
      assertFalse(line.contains("Wisteria"), line);
    }
    JsonNode json =
        new ObjectMapper().readTree(line(LogFormat.JSON, event("x", BareFault.of(fault))));
    assertTrue(json.get("fault").textValue().contains("\n"), "its stack in lines");
  }

  /** Nobody makes a second line by what a message quotes. */
  @Test
  void aTextIsOneLine() {
    String line = line(LogFormat.TEXT, event("a message\r\nof {} lines", null, 2));
    assertEquals(
        "2026-03-01T10:00:00.120Z WARN  logger - a message of 2 lines  job=7"
            + System.lineSeparator(),
        line);
  }

  private static String line(LogFormat format, LoggingEvent event) {
    return new String(format.encoder(CONTEXT).encode(event), StandardCharsets.UTF_8);
  }

  private static LoggingEvent event(String message, Throwable fault, Object... values) {
    LoggingEvent event =
        new LoggingEvent("here", CONTEXT.getLogger("a.logger"), Level.WARN, message, fault, values);
    event.setInstant(Instant.parse("2026-03-01T10:00:00.120Z"));
    event.setMDCPropertyMap(Map.of("job", "7"));
    return event;
  }
}
