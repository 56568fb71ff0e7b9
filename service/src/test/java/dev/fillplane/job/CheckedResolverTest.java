package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.util.Promise;
import org.junit.jupiter.api.Test;

class CheckedResolverTest {

  @Test
  void closedAddressesAmongOpenOnesAreLeftOut() {
    assertEquals(
        List.of("/9.9.9.9:443", "/[2620:fe:0:0:0:0:0:fe]:443"),
        resolve(host -> addresses("10.0.0.1", "9.9.9.9", "::1", "2620:fe::fe")));
  }

  @Test
  void onlyClosedAddresses() {
    CompletionException failure =
        assertThrows(
            CompletionException.class, () -> resolve(host -> addresses("10.0.0.1", "fd00::1")));
    assertInstanceOf(CheckedResolver.ForbiddenAddress.class, failure.getCause());
  }

  /** The answer that was checked is the one that is connected to; the next is not asked for. */
  @Test
  void nameThatLeadsElsewhereAMomentLater() {
    AtomicInteger asked = new AtomicInteger();
    List<String> found =
        resolve(host -> addresses(asked.getAndIncrement() == 0 ? "9.9.9.9" : "127.0.0.1"));
    assertEquals(List.of("/9.9.9.9:443"), found);
    assertEquals(1, asked.get());
  }

  private static List<String> resolve(CheckedResolver.Names names) {
    Promise.Completable<List<InetSocketAddress>> found = new Promise.Completable<>();
    new CheckedResolver(names, WebhookTargets.usual(), Runnable::run)
        .resolve("receiver.test", 443, Map.of(), found);
    return found.join().stream().map(InetSocketAddress::toString).toList();
  }

  private static InetAddress[] addresses(String... texts) {
    return Arrays.stream(texts).map(CheckedResolverTest::address).toArray(InetAddress[]::new);
  }

  private static InetAddress address(String text) {
    try {
      return InetAddress.getByName(text);
    } catch (UnknownHostException e) {
      throw new IllegalArgumentException(text, e);
    }
  }
}
