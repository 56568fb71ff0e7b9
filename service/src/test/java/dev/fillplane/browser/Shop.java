package dev.fillplane.browser;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;

/** The page of an invented supplier, of another origin, with the two lines of the calculator. */
final class Shop implements AutoCloseable {

  private final HttpServer server;

  private Shop(HttpServer server) {
    this.server = server;
  }

  /** Opens it; the address of the service and the attributes of the element are set later. */
  static Shop open() throws IOException {
    return new Shop(
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0));
  }

  /** Its host: not the one of the service, though the machine is the same. */
  String host() {
    return "localhost:" + server.getAddress().getPort();
  }

  /** Sells with the calculator of a service. */
  void sell(String service, String attributes) {
    String text =
        """
        <!doctype html><html lang="en"><title>A shop (invented)</title>
        <main><h1>A shop (invented)</h1>
        <script type="module" src="%s/elements/bag-calculator.js"></script>
        <fillplane-bags area="40" from="4" to="8" %s></fillplane-bags></main></html>
        """
            .formatted(service, attributes);
    byte[] page = text.getBytes(StandardCharsets.UTF_8);
    server.createContext(
        "/",
        exchange -> {
          exchange.getResponseHeaders().add("Content-Type", "text/html; charset=utf-8");
          exchange.sendResponseHeaders(200, page.length);
          exchange.getResponseBody().write(page);
          exchange.close();
        });
    server.start();
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
