package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.concurrent.CountDownLatch;

/** Answers every request alike, or never, and keeps what was last asked. */
final class StubService implements AutoCloseable {
  private final HttpServer server;
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile Headers lastHeaders = new Headers();
  private volatile String lastPath = "";

  private StubService(int status, String contentType, String body) {
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.createContext("/", exchange -> answer(exchange, status, contentType, body));
    server.start();
  }

  static StubService answering(int status, String contentType, String body) {
    return new StubService(status, contentType, body);
  }

  static StubService silent() {
    return new StubService(0, "", "");
  }

  URI address() {
    return URI.create("http://localhost:" + server.getAddress().getPort());
  }

  String lastHeader(String name) {
    return lastHeaders.getFirst(name);
  }

  String lastPath() {
    return lastPath;
  }

  private void answer(HttpExchange exchange, int status, String contentType, String body)
      throws IOException {
    lastHeaders = exchange.getRequestHeaders();
    lastPath = exchange.getRequestURI().toString();
    if (status == 0) {
      waitForClose();
    } else {
      byte[] bytes = body.getBytes(UTF_8);
      exchange.getResponseHeaders().set("Content-Type", contentType);
      exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
      exchange.getResponseBody().write(bytes);
    }
    exchange.close();
  }

  private void waitForClose() {
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    closed.countDown();
    server.stop(0);
  }
}
