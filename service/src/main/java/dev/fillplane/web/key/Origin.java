package dev.fillplane.web.key;

import java.net.URI;
import java.util.Locale;

/** Where a page comes from, as browsers write it in the Origin header (RFC 6454, section 6.2). */
public final class Origin {

  private Origin() {}

  /**
   * {@code text} as a browser writes it: in lower case, without the port where it is the usual one.
   *
   * @throws IllegalArgumentException if it is not a scheme of the web with a host and perhaps a
   *     port, and nothing else
   */
  public static String of(String text) {
    URI uri;
    try {
      uri = URI.create(text.toLowerCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw refused(text);
    }
    boolean web = "https".equals(uri.getScheme()) || "http".equals(uri.getScheme());
    if (!web || uri.getHost() == null) {
      throw refused(text);
    }
    String origin = uri.getScheme() + "://" + uri.getHost();
    String full = uri.getPort() < 0 ? origin : origin + ":" + uri.getPort();
    if (!full.equals(uri.toString())) {
      throw refused(text);
    }
    return uri.getPort() == usualPort(uri.getScheme()) ? origin : full;
  }

  private static int usualPort(String scheme) {
    return scheme.equals("https") ? 443 : 80;
  }

  private static IllegalArgumentException refused(String text) {
    return new IllegalArgumentException(
        "\"" + text + "\" is not an origin; write it like https://shop.example, without a path.");
  }
}
