package dev.fillplane.job;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.net.InetAddress;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;

/**
 * Where messages may go.
 *
 * @param privateAddresses whether addresses of private networks and of this machine are allowed
 * @param plainHttp whether http is allowed beside https
 */
public record WebhookTargets(boolean privateAddresses, boolean plainHttp) {

  /** The open internet by https. */
  public static WebhookTargets usual() {
    return new WebhookTargets(false, false);
  }

  /**
   * Finds what is wrong with an address of a receiver. Where its name leads to is looked at again
   * at every connection, see {@link WebhookSender}.
   */
  public void check(String url, Place place, Findings findings) {
    URI uri;
    try {
      uri = new URI(url);
    } catch (URISyntaxException e) {
      findings.error("webhook-unclear", place);
      return;
    }
    if (uri.getHost() == null || uri.getRawUserInfo() != null || uri.getRawFragment() != null) {
      findings.error("webhook-unclear", place);
    } else if (!allowsScheme(uri)) {
      findings.error("webhook-not-https", place);
    } else if (!literal(uri.getHost()).map(this::allows).orElse(true)) {
      findings.error("webhook-private-address", place);
    }
  }

  /** The address that a host is, unless it is a name; nothing is looked up. */
  private static Optional<InetAddress> literal(String host) {
    try {
      return host.matches("[0-9.]+|\\[.*]")
          ? Optional.of(InetAddress.getByName(host))
          : Optional.empty();
    } catch (UnknownHostException e) {
      return Optional.empty();
    }
  }

  /** Whether messages may go the way that {@code url} begins with. */
  boolean allowsScheme(URI url) {
    String scheme = String.valueOf(url.getScheme()).toLowerCase(Locale.ROOT);
    return scheme.equals("https") || (plainHttp && scheme.equals("http"));
  }

  /** Whether messages may go to {@code address}. */
  boolean allows(InetAddress address) {
    return privateAddresses || PublicAddresses.contains(address);
  }
}
