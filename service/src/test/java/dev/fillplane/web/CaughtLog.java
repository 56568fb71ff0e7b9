package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertFalse;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxyUtil;
import ch.qos.logback.core.AppenderBase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.slf4j.LoggerFactory;

/** All that is logged meanwhile. */
final class CaughtLog extends AppenderBase<ILoggingEvent> implements AutoCloseable {

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(10);

  private final List<ILoggingEvent> events = new CopyOnWriteArrayList<>();

  static CaughtLog begin() {
    CaughtLog log = new CaughtLog();
    log.start();
    root().addAppender(log);
    return log;
  }

  private static Logger root() {
    return (Logger) LoggerFactory.getLogger(Logger.ROOT_LOGGER_NAME);
  }

  @Override
  protected void append(ILoggingEvent event) {
    events.add(event);
  }

  /** What the line of a request tells; it is written once the answer is out. */
  Map<String, Object> lineOf(String request) {
    long end = System.nanoTime() + PATIENCE;
    while (System.nanoTime() < end) {
      Optional<Map<String, Object>> line =
          events.stream()
              .filter(event -> event.getLoggerName().equals("fillplane.requests"))
              .map(CaughtLog::pairs)
              .filter(pairs -> request.equals(pairs.get("request")))
              .findFirst();
      if (line.isPresent()) {
        return line.get();
      }
      LockSupport.parkNanos(1_000_000);
    }
    throw new AssertionError("no line of request " + request);
  }

  private static Map<String, Object> pairs(ILoggingEvent event) {
    Map<String, Object> pairs = new LinkedHashMap<>();
    event.getKeyValuePairs().forEach(pair -> pairs.put(pair.key, pair.value));
    return pairs;
  }

  /** No line holds any of these texts. */
  void tellsNothingOf(String... texts) {
    for (ILoggingEvent event : events) {
      String all =
          event.getFormattedMessage()
              + event.getKeyValuePairs()
              + event.getMDCPropertyMap()
              + ThrowableProxyUtil.asString(event.getThrowableProxy());
      for (String text : texts) {
        assertFalse(all.contains(text), all);
      }
    }
  }

  @Override
  public void close() {
    root().detachAppender(this);
  }
}
