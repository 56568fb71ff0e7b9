package dev.fillplane.fuzz;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** Posts bodies to a service; what is not answered in time is a failure. */
final class Caller {

  /** Far more than any answer takes, as the machine may be busy with other things. */
  private static final Duration DEADLINE = Duration.ofSeconds(30);

  private final URI service;
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  Caller(URI service) {
    this.service = service;
  }

  Reply post(Operation operation, String body) {
    return post(operation.path(), operation.bodyType(), body);
  }

  /**
   * The answer.
   *
   * @throws AssertionError if there is none within the deadline
   */
  Reply post(String path, String type, String body) {
    HttpRequest request =
        HttpRequest.newBuilder(service.resolve(path))
            .timeout(DEADLINE)
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.getBytes(StandardCharsets.UTF_8)))
            .build();
    try {
      HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
      String told = answer.headers().firstValue("Content-Type").orElse("");
      return new Reply(answer.statusCode(), told.split(";", 2)[0], answer.body());
    } catch (IOException e) {
      throw new AssertionError("no answer: " + e, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("no answer", e);
    }
  }
}
