package org.example.estimates;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The receiver of the page, called as the service calls it: signed as Standard Webhooks say. */
class JobNewsTest {
  private static final byte[] SECRET = "twenty-four bytes or more of secret".getBytes(UTF_8);
  private static final byte[] OLD = "the secret that was used before it".getBytes(UTF_8);
  private static final String BODY = "{\"type\": \"job.finished\"}";

  private final List<String> news = new CopyOnWriteArrayList<>();
  private HttpServer receiver;

  @BeforeEach
  void listen() throws Exception {
    receiver = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    receiver.createContext(
        "/", new JobNews(body -> news.add(new String(body, UTF_8)), told(SECRET), told(OLD)));
    receiver.start();
  }

  @AfterEach
  void stop() {
    receiver.stop(0);
  }

  @Test
  void takesWhatIsSignedByEitherSecretOnce() throws Exception {
    assertEquals(204, send("msg_1", SECRET, BODY));
    assertEquals(204, send("msg_1", SECRET, BODY));
    assertEquals(List.of(BODY), news);
    assertEquals(204, send("msg_2", OLD, BODY));
    assertEquals(2, news.size());
  }

  @Test
  void refusesWhatIsSignedByAnother() throws Exception {
    assertEquals(401, send("msg_1", "nobody knows this secret here".getBytes(UTF_8), BODY));
    assertEquals(List.of(), news);
  }

  private int send(String id, byte[] secret, String body) throws Exception {
    long now = Instant.now().getEpochSecond();
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(new SecretKeySpec(secret, "HmacSHA256"));
    byte[] signature = mac.doFinal((id + "." + now + "." + body).getBytes(UTF_8));
    URI address = URI.create("http://localhost:" + receiver.getAddress().getPort());
    HttpRequest request =
        HttpRequest.newBuilder(address)
            .header("webhook-id", id)
            .header("webhook-timestamp", Long.toString(now))
            .header("webhook-signature", "v1," + Base64.getEncoder().encodeToString(signature))
            .POST(BodyPublishers.ofString(body))
            .build();
    return HttpClient.newHttpClient().send(request, BodyHandlers.discarding()).statusCode();
  }

  private static String told(byte[] secret) {
    return "whsec_" + Base64.getEncoder().encodeToString(secret);
  }
}
