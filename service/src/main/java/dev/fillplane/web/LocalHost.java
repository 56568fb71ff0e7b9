package dev.fillplane.web;

import io.javalin.http.Context;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;

/**
 * Keeps pages of the web away from a service that asks for no key because only this machine reaches
 * it: a page whose name was made to lead here (DNS rebinding) still sends its own name as Host.
 */
final class LocalHost {

  private static final String NAMES = "localhost|127(\\.\\d{1,3}){3}|\\[::1]";

  private LocalHost() {}

  /**
   * Checks the name that the caller used.
   *
   * @throws Refusal if it is not one of this machine
   */
  static void check(Context context, Access access) {
    if (!access.open() && !isLocal(context.host())) {
      throw Refusal.of(
          Problem.Kind.FORBIDDEN,
          "This service is for its own machine; call it as localhost, or start it with keys.");
    }
  }

  private static boolean isLocal(String authority) {
    try {
      return Optional.ofNullable(URI.create("http://" + authority).getHost())
          .filter(host -> host.toLowerCase(Locale.ROOT).matches(NAMES))
          .isPresent();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
