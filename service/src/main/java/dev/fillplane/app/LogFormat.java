package dev.fillplane.app;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.encoder.Encoder;

/** How lines of the log are written. */
enum LogFormat {
  /** For people. */
  TEXT {
    @Override
    Encoder<ILoggingEvent> encoder(LoggerContext context) {
      PatternLayoutEncoder encoder = new PatternLayoutEncoder();
      encoder.setContext(context);
      encoder.setPattern(
          "%d{yyyy-MM-dd'T'HH:mm:ss.SSSXXX, UTC} %-5level %logger{0} - %replace(%msg){'[\\r\\n]+', ' '}"
              + " %kvp{NONE} %mdc%n%ex");
      encoder.start();
      return encoder;
    }
  },

  /** For programs: one JSON object a line. */
  JSON {
    @Override
    Encoder<ILoggingEvent> encoder(LoggerContext context) {
      return new JsonLines();
    }
  };

  abstract Encoder<ILoggingEvent> encoder(LoggerContext context);
}
