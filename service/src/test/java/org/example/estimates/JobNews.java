package org.example.estimates;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import dev.fillplane.client.WebhookException;
import dev.fillplane.client.WebhookSignatures;
import java.io.IOException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** Takes the webhook of a job that has ended; hands its body on once. */
final class JobNews implements HttpHandler {
  private static final int LONGEST = 1 << 20;

  private final WebhookSignatures signatures;
  private final Consumer<byte[]> onNews;
  private final Set<String> seen = ConcurrentHashMap.newKeySet();

  /** While you change the secret, give both: {@code new JobNews(onNews, newOne, oldOne)}. */
  JobNews(Consumer<byte[]> onNews, String... secrets) {
    this.onNews = onNews;
    this.signatures = new WebhookSignatures(secrets);
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try {
      byte[] body = exchange.getRequestBody().readNBytes(LONGEST);
      exchange.sendResponseHeaders(accept(exchange, body) ? 204 : 401, -1);
    } finally {
      exchange.close();
    }
  }

  private boolean accept(HttpExchange exchange, byte[] body) {
    String id = exchange.getRequestHeaders().getFirst("webhook-id");
    String timestamp = exchange.getRequestHeaders().getFirst("webhook-timestamp");
    String signature = exchange.getRequestHeaders().getFirst("webhook-signature");
    try {
      signatures.check(id, timestamp, signature, body);
    } catch (WebhookException e) {
      return false;
    }
    if (seen.add(id)) {
      handOn(id, body);
    }
    return true;
  }

  /** What could not be handled is sent again. */
  private void handOn(String id, byte[] body) {
    try {
      onNews.accept(body);
    } catch (RuntimeException e) {
      seen.remove(id);
      throw e;
    }
  }
}
