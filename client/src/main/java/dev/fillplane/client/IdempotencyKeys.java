package dev.fillplane.client;

import java.net.http.HttpRequest;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * Gives a call that creates something its {@code Idempotency-Key}, the same in each attempt
 * (draft-ietf-httpapi-idempotency-key-header-07: a string of structured fields, in quotes).
 */
final class IdempotencyKeys {
  private static final String HEADER = "Idempotency-Key";
  private static final Set<String> CREATING = Set.of("/v1/jobs", "/v1/job-uploads");

  private final ThreadLocal<String> ofCall = new ThreadLocal<>();

  static String make() {
    return '"' + UUID.randomUUID().toString() + '"';
  }

  /** Runs all attempts of a call under one key. */
  <T> T during(Supplier<T> call) {
    ofCall.set(make());
    try {
      return call.get();
    } finally {
      ofCall.remove();
    }
  }

  /** Adds a key where the request creates something and its caller gave none. */
  void addTo(HttpRequest.Builder request, String basePath) {
    HttpRequest made = request.copy().build();
    String path = made.uri().getPath().substring(basePath.length());
    boolean creates = made.method().equals("POST") && CREATING.contains(path);
    if (creates && made.headers().firstValue(HEADER).isEmpty()) {
      String key = ofCall.get();
      request.setHeader(HEADER, key == null ? make() : key);
    }
  }
}
