package dev.fillplane.web;

import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.Origin;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Who may call the service.
 *
 * @param keys the keys that are asked for, if any are
 * @param open whether anybody who reaches it may call, from elsewhere as well
 * @param origins of which pages may use the light operations where no keys are asked for
 */
public record Access(Optional<KeyBook> keys, boolean open, List<String> origins) {

  /** Writes origins as browsers do. */
  public Access {
    origins = origins.stream().map(Origin::of).toList();
  }

  /** Programs of this machine, without keys. */
  public static Access local() {
    return new Access(Optional.empty(), false, List.of());
  }

  /** Anybody who reaches it. */
  public static Access withoutKeys() {
    return new Access(Optional.empty(), true, List.of());
  }

  /** Whoever has a key. */
  public static Access withKeys(KeyBook book) {
    return new Access(Optional.of(book), false, List.of());
  }

  /** The same with the light operations for pages of {@code some}. */
  public Access withOrigins(List<String> some) {
    return new Access(keys, open, some);
  }

  /** Whether a page of {@code origin} may use the light operations, with some key if with any. */
  boolean knowsOrigin(String origin) {
    return keys.map(book -> book.knowsOrigin(origin)).orElse(origins.contains(origin));
  }

  /**
   * Checks that nobody from elsewhere is let in by oversight, before the service listens.
   *
   * @throws IllegalArgumentException if {@code host} can be reached from elsewhere, no keys are
   *     asked for, and nobody said that this is meant
   */
  public void check(String host) {
    if (keys.isEmpty() && !open && !isLoopback(host)) {
      throw new IllegalArgumentException(
          "Without keys the service listens on this machine only, and "
              + host
              + " can be reached from elsewhere. Start it with --keys FILE, or with --without-keys"
              + " if anybody who reaches it may call.");
    }
  }

  private static boolean isLoopback(String host) {
    try {
      return Arrays.stream(InetAddress.getAllByName(host)).allMatch(InetAddress::isLoopbackAddress);
    } catch (UnknownHostException e) {
      throw new IllegalArgumentException("There is no address " + host + " to listen on.", e);
    }
  }
}
