package dev.fillplane.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Executors;

/** A reverse proxy that puts a service below a path, and can answer in its place. */
final class Proxy implements AutoCloseable {

  private static final String PATH = "/floors/";

  private final HttpClient client = HttpClient.newHttpClient();
  private final HttpServer server;
  private final int service;
  private volatile Trouble trouble;

  private record Trouble(int status, String type, byte[] body) {}

  private Proxy(HttpServer server, int service) {
    this.server = server;
    this.service = service;
  }

  /** One before the service at a port of this machine. */
  static Proxy before(int service) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    Proxy proxy = new Proxy(server, service);
    server.createContext(PATH, proxy::answer);
    server.setExecutor(Executors.newCachedThreadPool());
    server.start();
    return proxy;
  }

  String host() {
    return "127.0.0.1:" + server.getAddress().getPort();
  }

  /** The address of a path of the service, which begins without a slash. */
  String at(String path) {
    return "http://" + host() + PATH + path;
  }

  /** Answers calculations itself from now on. */
  void fail(int status, String type, String body) {
    trouble = new Trouble(status, type, body.getBytes(StandardCharsets.UTF_8));
  }

  /** Lets all through again. */
  void heal() {
    trouble = null;
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Trouble now = trouble;
      if (now != null && exchange.getRequestMethod().equals("POST")) {
        send(exchange, now.status, now.type, now.body);
      } else {
        HttpResponse<byte[]> answer = client.send(passedOn(exchange), BodyHandlers.ofByteArray());
        String type = answer.headers().firstValue("Content-Type").orElse("text/plain");
        answer
            .headers()
            .firstValue("Location")
            .ifPresent(place -> exchange.getResponseHeaders().add("Location", place));
        send(exchange, answer.statusCode(), type, answer.body());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private HttpRequest passedOn(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().toString().substring(PATH.length() - 1);
    String type = exchange.getRequestHeaders().getFirst("Content-Type");
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service + path))
        .header("Content-Type", type == null ? "text/plain" : type)
        .method(
            exchange.getRequestMethod(),
            BodyPublishers.ofByteArray(exchange.getRequestBody().readAllBytes()))
        .build();
  }

  private static void send(HttpExchange exchange, int status, String type, byte[] body)
      throws IOException {
    exchange.getResponseHeaders().add("Content-Type", type);
    exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
    exchange.getResponseBody().write(body);
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
