package dev.fillplane.client;

import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import java.util.Random;
import javax.net.ssl.SSLContext;

/** What a client is made of; {@link FillplaneClient#at} starts one. */
public final class ClientBuilder {
  final String baseUri;
  Optional<String> apiKey = Optional.empty();
  Duration connectTimeout = Duration.ofSeconds(5);
  Duration readTimeout = Duration.ofSeconds(60);
  Optional<SSLContext> sslContext = Optional.empty();
  Retries retries = Retries.usual();
  Time time = Time.REAL;
  Random jitter = new Random();

  ClientBuilder(URI baseUri) {
    boolean web = "http".equals(baseUri.getScheme()) || "https".equals(baseUri.getScheme());
    boolean more =
        baseUri.getRawQuery() != null
            || baseUri.getRawFragment() != null
            || baseUri.getRawUserInfo() != null;
    if (!web || baseUri.getHost() == null || more) {
      throw new IllegalArgumentException("Not the address of a service: " + baseUri);
    }
    this.baseUri = baseUri.toString().replaceFirst("/+$", "");
  }

  /** The key sent with every request as {@code Authorization: Bearer}; none by default. */
  public ClientBuilder apiKey(String key) {
    if (!key.matches("[!-~]+")) {
      throw new IllegalArgumentException("The key is blank or has characters no key has.");
    }
    apiKey = Optional.of(key);
    return this;
  }

  /** How long to wait for a connection; 5 seconds by default. */
  public ClientBuilder connectTimeout(Duration timeout) {
    connectTimeout = positive(timeout);
    return this;
  }

  /** How long to wait for an answer to begin; 60 seconds by default. */
  public ClientBuilder readTimeout(Duration timeout) {
    readTimeout = positive(timeout);
    return this;
  }

  /**
   * Whom to trust by https, such as a certificate authority of one's own; as Java does by default.
   */
  public ClientBuilder sslContext(SSLContext context) {
    sslContext = Optional.of(context);
    return this;
  }

  /** How often and how patiently to ask again; {@link Retries#usual} by default. */
  public ClientBuilder retries(Retries retries) {
    this.retries = retries;
    return this;
  }

  /** A clock turned by hand and pauses that can be foretold. */
  ClientBuilder time(Time time, long seed) {
    this.time = time;
    this.jitter = new Random(seed);
    return this;
  }

  /** Makes the client. */
  public FillplaneClient build() {
    return new FillplaneClient(this);
  }

  private static Duration positive(Duration timeout) {
    if (timeout.isNegative() || timeout.isZero()) {
      throw new IllegalArgumentException("A timeout must be longer than nothing: " + timeout);
    }
    return timeout;
  }
}
