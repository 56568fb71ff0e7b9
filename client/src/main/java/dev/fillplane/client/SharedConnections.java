package dev.fillplane.client;

import dev.fillplane.client.generated.ApiClient;
import java.net.http.HttpClient;

/** The generated client would open connections of its own for each group of operations. */
final class SharedConnections extends ApiClient {
  private final HttpClient http;

  SharedConnections(HttpClient http, String baseUri) {
    super(HttpClient.newBuilder(), createDefaultObjectMapper(), baseUri);
    this.http = http;
  }

  @Override
  public HttpClient getHttpClient() {
    return http;
  }
}
