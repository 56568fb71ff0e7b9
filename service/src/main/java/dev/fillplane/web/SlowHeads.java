package dev.fillplane.web;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;

/**
 * Closes connections whose next request does not get over its headers. The idle time of a
 * connection does not bound that: every byte, sent one a second, begins it anew.
 */
final class SlowHeads implements Connection.Listener {

  private final Duration patience;
  private final Map<Connection, Quiet> connections = new ConcurrentHashMap<>();

  /**
   * A connection between two requests.
   *
   * @param messages requests that have begun
   * @param bytes that had come when it was last looked at and the next had not begun
   * @param since when that was
   */
  private record Quiet(long messages, long bytes, long since) {}

  SlowHeads(Duration patience) {
    this.patience = patience;
  }

  /** Looks at all connections, a few times in the time that a head may take. */
  void watch(ScheduledExecutorService watch) {
    long step = Math.max(1, patience.toMillis() / 4);
    watch.scheduleWithFixedDelay(this::look, step, step, TimeUnit.MILLISECONDS);
  }

  @Override
  public void onOpened(Connection connection) {
    connections.put(connection, new Quiet(0, 0, System.nanoTime()));
  }

  @Override
  public void onClosed(Connection connection) {
    connections.remove(connection);
  }

  /** The answer of a stream begins before its body ends; it is given more time, and so known. */
  private static boolean streams(Connection connection) {
    return connection.getEndPoint().getIdleTimeout() > Listening.IDLE_MILLIS;
  }

  private void look() {
    connections.forEach(this::look);
  }

  private void look(Connection connection, Quiet seen) {
    long messages = connection.getMessagesIn();
    boolean answering = messages > connection.getMessagesOut() || streams(connection);
    long bytes = connection.getBytesIn();
    long now = System.nanoTime();
    if (answering || messages != seen.messages() || bytes == seen.bytes()) {
      connections.replace(connection, seen, new Quiet(messages, bytes, now));
    } else if (now - seen.since() > patience.toNanos()) {
      connection.getEndPoint().close();
    }
  }
}
