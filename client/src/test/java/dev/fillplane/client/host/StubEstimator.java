package dev.fillplane.client.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.TestClients;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;

/** Answers each call by its body, on several threads. */
final class StubEstimator implements AutoCloseable {

  /** Status and body of an answer. */
  record Answer(int status, String json) {}

  private final HttpServer server;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final Function<String, Answer> answers;
  private final List<String> asked = new CopyOnWriteArrayList<>();

  StubEstimator(Function<String, Answer> answers) {
    this.answers = answers;
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.setExecutor(threads);
    server.createContext("/", this::answer);
    server.start();
  }

  FillplaneClient client() {
    URI address = URI.create("http://localhost:" + server.getAddress().getPort());
    return TestClients.once(address);
  }

  /** The bodies so far. */
  List<String> asked() {
    return List.copyOf(asked);
  }

  private void answer(HttpExchange exchange) throws IOException {
    String body = new String(exchange.getRequestBody().readAllBytes(), UTF_8);
    asked.add(exchange.getRequestMethod() + " " + exchange.getRequestURI() + " " + body);
    Answer answer = answers.apply(exchange.getRequestURI() + " " + body);
    byte[] bytes = answer.json().getBytes(UTF_8);
    String type = answer.status() < 300 ? "application/json" : "application/problem+json";
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(answer.status(), bytes.length);
    exchange.getResponseBody().write(bytes);
    exchange.close();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
