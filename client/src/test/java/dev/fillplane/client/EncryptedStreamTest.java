package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.client.generated.model.PlanRequest;
import java.net.URI;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Streams by https: only to whom the certificate names, if who signed it is trusted. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class EncryptedStreamTest {
  private static final char[] PASSWORD = "changeit".toCharArray();

  @TempDir private static Path folder;
  private static SSLContext here;
  private static SSLContext elsewhere;

  private final VirtualTime time = new VirtualTime("2026-03-01T08:00:00Z");

  @BeforeAll
  static void makeCertificates() throws Exception {
    here = certified("localhost");
    elsewhere = certified("elsewhere.example");
  }

  @Test
  void aTrustedServiceIsTalkedTo() {
    try (StreamingService service = encrypted(here);
        PlanStream stream = client(service, Optional.of(here)).streamPlans(requests())) {
      assertEquals("unit 1", stream.next().plan().getReference());
      assertEquals("unit 2", stream.next().plan().getReference());
    }
  }

  @Test
  void anUnknownCertificateIsRefusedAtOnce() {
    refused(here, Optional.empty());
    refused(here, Optional.of(elsewhere));
  }

  @Test
  void aCertificateOfAnotherNameIsRefused() {
    refused(elsewhere, Optional.of(elsewhere));
  }

  /** The good-bye of TLS would wait behind the thread that writes. */
  @Test
  void closingDoesNotWaitForAServiceThatReadsNoMore() {
    CountDownLatch over = new CountDownLatch(1);
    StreamingService.Script deaf =
        connection -> {
          connection.begin();
          connection.answer(1);
          await(over);
        };
    String large = "x".repeat(1 << 20);
    Iterator<PlanRequest> many =
        Stream.generate(() -> new PlanRequest().reference(large))
            .limit(PlanStream.AHEAD)
            .iterator();
    try (StreamingService service = new StreamingService(here.getServerSocketFactory(), deaf)) {
      PlanStream stream = client(service, Optional.of(here)).streamPlans(many);
      stream.next();
      stream.close();
      assertFalse(stream.hasNext());
    } finally {
      over.countDown();
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void refused(SSLContext shown, Optional<SSLContext> trusted) {
    try (StreamingService service = encrypted(shown);
        PlanStream stream = client(service, trusted).streamPlans(requests())) {
      var failure = assertThrows(NoAnswerException.class, stream::hasNext);
      assertInstanceOf(SSLException.class, failure.getCause());
      assertEquals(List.of(), time.pauses(), "another attempt would not mend it");
    }
  }

  private static StreamingService encrypted(SSLContext context) {
    return new StreamingService(context.getServerSocketFactory(), StreamingService::answerAll);
  }

  private FillplaneClient client(StreamingService service, Optional<SSLContext> trusted) {
    URI address = URI.create("https://localhost:" + service.address().getPort());
    ClientBuilder builder = FillplaneClient.at(address).time(time, 1);
    trusted.ifPresent(builder::sslContext);
    return builder.build();
  }

  private static Iterator<PlanRequest> requests() {
    return List.of(new PlanRequest().reference("unit 1"), new PlanRequest().reference("unit 2"))
        .iterator();
  }

  /** Has a certificate of a name, signed by itself, and trusts that. */
  private static SSLContext certified(String name) throws Exception {
    Path store = folder.resolve(name);
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
            "-genkeypair",
            "-keyalg",
            "EC",
            "-alias",
            "it",
            "-dname",
            "CN=" + name,
            "-ext",
            "san=dns:" + name,
            "-storepass",
            "changeit",
            "-keystore",
            store.toString());
    assertEquals(0, new ProcessBuilder(command).start().waitFor());
    KeyStore keys = KeyStore.getInstance(store.toFile(), PASSWORD);
    var own = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    own.init(keys, PASSWORD);
    KeyStore known = KeyStore.getInstance("PKCS12");
    known.load(null, null);
    known.setCertificateEntry("it", keys.getCertificate("it"));
    var trusted = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trusted.init(known);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(own.getKeyManagers(), trusted.getTrustManagers(), null);
    return context;
  }
}
