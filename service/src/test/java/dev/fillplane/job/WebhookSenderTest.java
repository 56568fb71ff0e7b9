package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import dev.fillplane.job.Delivery.Outcome;
import dev.fillplane.trace.Trace;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every manner of a receiver; none holds the sender longer than its patience. */
class WebhookSenderTest {

  private static final WebhookTargets ANY = new WebhookTargets(true, true);
  private static final Duration SHORT = Duration.ofMillis(400);
  private static final Duration LONG = Duration.ofSeconds(20);
  private static final Instant NOW = Instant.parse("2026-03-01T10:00:00Z");
  private static final WebhookSecret SECRET =
      WebhookSecret.of("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw");
  private static final Trace TRACE =
      Trace.of(
          Optional.of("00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01"),
          Optional.of("congo=t61rcWkgMzE"));
  private static final WebhookMessage MESSAGE =
      new WebhookMessage(
          "msg_1",
          "job.finished",
          NOW.minusSeconds(60),
          Map.of("job", "7", "link", "/v1/jobs/7"),
          Optional.of(TRACE));

  @Test
  void receiverGetsASignedMessage() throws IOException {
    try (Receiver receiver = Receiver.answering("HTTP/1.1 204 No Content")) {
      Delivery delivery = send(receiver, LONG);
      assertEquals(Outcome.DELIVERED, delivery.outcome(), delivery.why());
      String request = receiver.requests().get(0);
      String body = request.substring(request.indexOf("\r\n\r\n") + 4);
      String signature =
          SECRET.sign("msg_1", NOW.getEpochSecond(), body.getBytes(StandardCharsets.UTF_8));
      String other = old().sign("msg_1", NOW.getEpochSecond(), MESSAGE.body());
      assertTrue(request.startsWith("POST /told HTTP/1.1\r\n"), request);
      has(request, "Host: receiver.test:" + receiver.url().getPort());
      has(request, "Content-Type: application/json");
      has(request, "webhook-id: msg_1");
      has(request, "webhook-timestamp: " + NOW.getEpochSecond());
      assertTrue(request.contains("\r\ntraceparent: 00-" + TRACE.id() + "-"), request);
      has(request, "tracestate: congo=t61rcWkgMzE");
      has(request, "webhook-signature: " + signature + " " + other);
      assertTrue(
          body.startsWith("{\"type\":\"job.finished\",\"timestamp\":\"2026-03-01T09:59:00Z\""),
          body);
      assertTrue(body.contains("\"link\":\"/v1/jobs/7\""), body);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "200, DELIVERED", "202, DELIVERED", "299, DELIVERED", "301, FAILED", "304, FAILED",
    "400, FAILED", "401, FAILED", "404, FAILED", "410, GONE", "500, FAILED"
  })
  void statusDecides(int status, Outcome outcome) throws IOException {
    try (Receiver receiver =
        Receiver.answering("HTTP/1.1 " + status + " Word\r\nContent-Length: 0")) {
      Delivery delivery = send(receiver, LONG);
      assertEquals(outcome, delivery.outcome(), delivery.why());
      assertEquals(status, delivery.status().orElseThrow());
    }
  }

  @Test
  void redirectsAreNotFollowed() throws IOException {
    try (Receiver other = Receiver.answering("HTTP/1.1 200 OK\r\nContent-Length: 0");
        Receiver receiver =
            Receiver.answering(
                "HTTP/1.1 307 Temporary Redirect\r\nContent-Length: 0\r\nLocation: "
                    + other.url())) {
      assertEquals(Outcome.FAILED, send(receiver, LONG).outcome());
      assertEquals(1, receiver.requests().size());
      assertEquals(List.of(), other.requests());
    }
  }

  @Test
  void receiverMayAskForMoreTime() throws IOException {
    try (Receiver receiver =
        Receiver.answering("HTTP/1.1 429 Slow\r\nRetry-After: 90\r\nContent-Length: 0")) {
      assertEquals(Optional.of(Duration.ofSeconds(90)), send(receiver, LONG).retryAfter());
    }
  }

  @Test
  void hangingReceiverIsLeft() throws IOException {
    try (Receiver receiver = Receiver.hanging()) {
      Delivery delivery = send(receiver, SHORT);
      assertEquals(Outcome.FAILED, delivery.outcome());
      assertEquals("no answer in time", delivery.why());
      assertEquals(1, receiver.requests().size());
    }
  }

  /** Each byte comes soon after the last, so that only a limit of the whole helps. */
  @Test
  void drippingReceiverIsLeft() throws IOException {
    CountDownLatch never = new CountDownLatch(1);
    try (Receiver receiver =
        Receiver.with(
            out -> {
              out.write("HTTP/1.1 200 OK\r\nX-Slow: ".getBytes(StandardCharsets.UTF_8));
              while (!never.await(20, TimeUnit.MILLISECONDS)) {
                out.write('a');
                out.flush();
              }
            })) {
      assertEquals("no answer in time", send(receiver, SHORT).why());
    }
  }

  @Test
  void endlessAnswersAreNotRead() throws Exception {
    AtomicInteger written = new AtomicInteger();
    CountDownLatch cut = new CountDownLatch(1);
    try (Receiver receiver = Receiver.with(out -> endless(out, written, cut));
        WebhookSender sender = WebhookSender.start(ANY, host -> loopback(), LONG)) {
      Delivery delivery = sender.send(receiver.url(), MESSAGE, List.of(SECRET), NOW);
      assertEquals(Outcome.DELIVERED, delivery.outcome());
      cut.await();
      assertTrue(written.get() < 50_000, written + " kB were taken");
    }
  }

  /** Writes 100 MB unless it is cut off. */
  private static void endless(OutputStream out, AtomicInteger written, CountDownLatch cut)
      throws IOException {
    try {
      out.write("HTTP/1.1 200 OK\r\n\r\n".getBytes(StandardCharsets.UTF_8));
      while (written.get() < 100_000) {
        out.write(new byte[1_000]);
        written.incrementAndGet();
      }
    } finally {
      cut.countDown();
    }
  }

  @Test
  void headersWithoutEndAreRefused() throws IOException {
    try (Receiver receiver = Receiver.answering("HTTP/1.1 200 OK\r\nX: " + "a".repeat(100_000))) {
      assertEquals(Outcome.FAILED, send(receiver, LONG).outcome());
    }
  }

  @Test
  void whatIsNoHttpFails() throws IOException {
    try (Receiver receiver = Receiver.answering("220 mail.test ESMTP")) {
      Delivery delivery = send(receiver, LONG);
      assertEquals(Outcome.FAILED, delivery.outcome());
      assertEquals("no connection, or no proper answer", delivery.why());
    }
  }

  @Test
  void nobodyThere() throws IOException {
    URI url;
    try (Receiver receiver = Receiver.hanging()) {
      url = receiver.url();
    }
    assertEquals(Outcome.FAILED, send(ANY, url, LONG, host -> loopback()).outcome());
  }

  @Test
  void privateAddressesAreNotConnectedTo() throws IOException {
    WebhookTargets open = new WebhookTargets(false, true);
    try (Receiver receiver = Receiver.answering("HTTP/1.1 200 OK\r\nContent-Length: 0")) {
      Delivery byName = send(open, receiver.url(), LONG, host -> loopback());
      assertEquals("the address is not of the open internet", byName.why());
      for (String host : List.of("127.0.0.1", "[::1]", "[::ffff:127.0.0.1]", "localhost")) {
        URI url = URI.create("http://" + host + ":" + receiver.url().getPort() + "/");
        Delivery literal = send(open, url, LONG, InetAddress::getAllByName);
        assertEquals("the address is not of the open internet", literal.why(), host);
      }
      assertEquals(List.of(), receiver.requests());
    }
  }

  /** A name is asked for once for each attempt, so that a second answer cannot be another. */
  @Test
  void nameIsLookedUpOnce() throws IOException {
    AtomicInteger asked = new AtomicInteger();
    try (Receiver receiver = Receiver.answering("HTTP/1.1 200 OK\r\nContent-Length: 0")) {
      send(
          ANY,
          receiver.url(),
          LONG,
          host -> {
            asked.incrementAndGet();
            return loopback();
          });
      assertEquals(1, asked.get());
    }
  }

  @Test
  void unknownNamesAndSlowNames() {
    URI url = URI.create("http://receiver.test/");
    Delivery unknown =
        send(
            ANY,
            url,
            LONG,
            host -> {
              throw new UnknownHostException(host);
            });
    assertEquals("the name is not known", unknown.why());
    CountDownLatch never = new CountDownLatch(1);
    Delivery slow =
        send(
            ANY,
            url,
            SHORT,
            host -> {
              try {
                never.await();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
              return loopback();
            });
    assertEquals("no answer in time", slow.why());
  }

  @Test
  void plainHttpOnlyWhereItIsAllowed() throws IOException {
    try (Receiver receiver = Receiver.answering("HTTP/1.1 200 OK\r\nContent-Length: 0")) {
      WebhookTargets secure = new WebhookTargets(true, false);
      Delivery delivery = send(secure, receiver.url(), LONG, host -> loopback());
      assertEquals("the address is not https", delivery.why());
      assertEquals(List.of(), receiver.requests());
    }
  }

  @Test
  void certificateOfNobodyIsRefused(@TempDir Path folder) throws Exception {
    HttpsServer server = HttpsServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
    server.setHttpsConfigurator(new HttpsConfigurator(selfSigned(folder.resolve("store"))));
    AtomicInteger requests = new AtomicInteger();
    server.createContext("/", exchange -> requests.incrementAndGet());
    server.start();
    try {
      URI url = URI.create("https://receiver.test:" + server.getAddress().getPort() + "/");
      Delivery delivery = send(new WebhookTargets(true, false), url, LONG, host -> loopback());
      assertEquals("no secure connection", delivery.why());
      assertEquals(0, requests.get());
    } finally {
      server.stop(0);
    }
  }

  // --- how

  /** A certificate of the right name that nobody vouches for. */
  private static SSLContext selfSigned(Path store) throws Exception {
    String keytool = Path.of(System.getProperty("java.home"), "bin", "keytool").toString();
    List<String> command =
        new ArrayList<>(List.of(keytool, "-genkeypair", "-keyalg", "EC", "-alias", "it"));
    command.addAll(List.of("-dname", "CN=receiver.test", "-ext", "san=dns:receiver.test"));
    command.addAll(List.of("-storepass", "changeit", "-keystore", store.toString()));
    assertEquals(0, new ProcessBuilder(command).start().waitFor());
    KeyStore keys = KeyStore.getInstance(store.toFile(), "changeit".toCharArray());
    KeyManagerFactory managers =
        KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    managers.init(keys, "changeit".toCharArray());
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(managers.getKeyManagers(), null, null);
    return context;
  }

  private static void has(String request, String line) {
    assertTrue(request.contains("\r\n" + line + "\r\n"), line + " is missing:\n" + request);
  }

  private static WebhookSecret old() {
    return new WebhookSecret(new byte[24]);
  }

  private static InetAddress[] loopback() {
    return new InetAddress[] {InetAddress.getLoopbackAddress()};
  }

  private static Delivery send(Receiver receiver, Duration patience) {
    return send(ANY, receiver.url(), patience, host -> loopback());
  }

  private static Delivery send(
      WebhookTargets targets, URI url, Duration patience, CheckedResolver.Names names) {
    try (WebhookSender sender = WebhookSender.start(targets, names, patience)) {
      return sender.send(url, MESSAGE, List.of(SECRET, old()), NOW);
    }
  }
}
