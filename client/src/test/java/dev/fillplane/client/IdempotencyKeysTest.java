package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.ApiException;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What creates something is asked for with a key, the same in each attempt. */
@Timeout(30)
class IdempotencyKeysTest {
  private static final String BUSY = RawService.busy("1");
  private static final String DONE = RawService.answer("202 Accepted", "", "{}");

  private final VirtualTime time = new VirtualTime("2026-03-01T08:00:00Z");

  @Test
  void eachAttemptHasTheSameKeyAndEachCallItsOwn() {
    try (RawService service = new RawService(BUSY, "", DONE)) {
      FillplaneClient client = client(service);
      client.call(() -> post(client, "/v1/jobs", Map.of()));
      client.call(() -> post(client, "/v1/jobs", Map.of()));
      Optional<String> first = service.header(0, "Idempotency-Key");
      assertTrue(first.orElseThrow().matches("\"[0-9a-f-]{36}\""), first.orElseThrow());
      assertEquals(first, service.header(1, "Idempotency-Key"));
      assertEquals(first, service.header(2, "Idempotency-Key"));
      assertNotEquals(first, service.header(3, "Idempotency-Key"));
    }
  }

  @Test
  void theCallersOwnKeyStays() {
    try (RawService service = new RawService(DONE)) {
      FillplaneClient client = client(service);
      client.call(() -> post(client, "/v1/jobs", Map.of("Idempotency-Key", "\"mine\"")));
      assertEquals(Optional.of("\"mine\""), service.header(0, "Idempotency-Key"));
    }
  }

  @Test
  void whatCreatesNothingHasNone() {
    try (RawService service = new RawService(DONE)) {
      FillplaneClient client = client(service);
      client.call(() -> post(client, "/v1/plans", Map.of()));
      assertEquals(Optional.empty(), service.header(0, "Idempotency-Key"));
    }
  }

  private FillplaneClient client(RawService service) {
    return FillplaneClient.at(service.address().resolve("/base")).time(time, 1).build();
  }

  /** As the generated classes do it. */
  private static Void post(FillplaneClient client, String path, Map<String, String> headers)
      throws ApiException {
    ApiClient api = client.api(configured -> configured);
    URI address = URI.create(api.getBaseUri() + path);
    HttpRequest.Builder request = HttpRequest.newBuilder(address).POST(BodyPublishers.ofString(""));
    headers.forEach(request::header);
    api.getRequestInterceptor().accept(request);
    try {
      HttpResponse<String> answer =
          api.getHttpClient().send(request.build(), BodyHandlers.ofString());
      if (answer.statusCode() / 100 != 2) {
        throw new ApiException(answer.statusCode(), answer.headers(), answer.body());
      }
      return null;
    } catch (IOException | InterruptedException e) {
      throw new ApiException(e);
    }
  }
}
