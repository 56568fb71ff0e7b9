package dev.fillplane.web.watch;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Tells the numbers at {@code /metrics} on a port of their own, with a thread of their own, so that
 * they can be read while all else is busy. Asks for no key: let only those who watch reach it.
 */
public final class AdminServer implements AutoCloseable {

  private static final String TYPE = "text/plain; version=0.0.4; charset=utf-8";
  private static final int OK = 200;
  private static final int NOT_FOUND = 404;
  private static final int NOT_ALLOWED = 405;

  private final HttpServer server;
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread own = new Thread(task, "admin");
            own.setDaemon(true);
            return own;
          });

  private AdminServer(HttpServer server) {
    this.server = server;
  }

  /**
   * Starts to listen.
   *
   * @throws IOException if the port is taken
   */
  public static AdminServer start(InetSocketAddress address, Metrics metrics) throws IOException {
    AdminServer admin = new AdminServer(HttpServer.create(address, 0));
    admin.server.setExecutor(admin.thread);
    admin.server.createContext("/", exchange -> answer(exchange, metrics));
    admin.server.start();
    return admin;
  }

  private static void answer(HttpExchange exchange, Metrics metrics) throws IOException {
    try (exchange) {
      if (!exchange.getRequestURI().getPath().equals("/metrics")) {
        exchange.sendResponseHeaders(NOT_FOUND, -1);
      } else if (!exchange.getRequestMethod().equals("GET")) {
        exchange.getResponseHeaders().set("Allow", "GET");
        exchange.sendResponseHeaders(NOT_ALLOWED, -1);
      } else {
        byte[] text = metrics.text().getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", TYPE);
        exchange.sendResponseHeaders(OK, text.length);
        try (OutputStream out = exchange.getResponseBody()) {
          out.write(text);
        }
      }
    }
  }

  /** The port that is listened on. */
  public int port() {
    return server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    thread.shutdownNow();
  }
}
