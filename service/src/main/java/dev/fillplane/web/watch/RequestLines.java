package dev.fillplane.web.watch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Response;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.event.Level;
import org.slf4j.spi.LoggingEventBuilder;

/**
 * One line of the log for each request once its answer is out, also for those that the HTTP server
 * refuses by itself; tells the observer as well. The health of the service is asked for all the
 * time: a good answer to that is told at debug level.
 */
public final class RequestLines implements RequestLog {

  private static final Logger LOG = LoggerFactory.getLogger("fillplane.requests");
  private static final Set<String> METHODS =
      Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");
  private static final double NANOS_PER_MILLI = 1e6;

  private final Observer observer;

  /** Tells {@code observer} too. */
  public RequestLines(Observer observer) {
    this.observer = observer;
  }

  @Override
  public void log(Request request, Response response) {
    long nanos = System.nanoTime() - request.getBeginNanoTime();
    Note note = Note.of(request);
    String route = route(note);
    observer.answered(method(request), route, response.getStatus(), nanos, note);
    LoggingEventBuilder line = LOG.atLevel(level(route, response.getStatus()));
    for (Map.Entry<String, Object> pair : told(request, response, note, nanos).entrySet()) {
      line = line.addKeyValue(pair.getKey(), pair.getValue());
    }
    line.log("answered");
  }

  private static Map<String, Object> told(
      Request request, Response response, Note note, long nanos) {
    Map<String, Object> told = new LinkedHashMap<>();
    told.put("request", note.id());
    told.put("trace", note.trace().id());
    told.put("method", method(request));
    told.put("route", route(note));
    told.put("status", response.getStatus());
    told.put("ms", Math.round(nanos / NANOS_PER_MILLI * 10) / 10.0);
    told.put("in", Math.max(0, Request.getContentBytesRead(request)));
    told.put("out", Math.max(0, Response.getContentBytesWritten(response)));
    note.key().ifPresent(key -> told.put("key", key));
    note.problem().ifPresent(problem -> told.put("problem", problem));
    putCount(told, "rooms", note.size().rooms());
    putCount(told, "readings", note.size().readings());
    putCount(told, "cells", note.size().cells());
    putCount(told, "lines", note.lines());
    return told;
  }

  private static void putCount(Map<String, Object> told, String name, long count) {
    if (count > 0) {
      told.put(name, count);
    }
  }

  private static String method(Request request) {
    return METHODS.contains(request.getMethod()) ? request.getMethod() : "other";
  }

  private static String route(Note note) {
    return note.route().orElse("none");
  }

  private static Level level(String route, int status) {
    if (status >= 500) {
      return Level.WARN;
    }
    return status < 400 && route.startsWith("/health/") ? Level.DEBUG : Level.INFO;
  }
}
