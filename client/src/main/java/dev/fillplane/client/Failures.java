package dev.fillplane.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import dev.fillplane.client.generated.ApiException;
import java.net.http.HttpTimeoutException;
import java.time.Instant;

/** Tells apart what the generated classes throw as one exception. */
final class Failures {
  private Failures() {}

  static RuntimeException of(ApiException failure, Instant now) {
    Throwable cause = failure.getCause();
    if (cause instanceof JsonProcessingException) {
      return new NoAnswerException("The service's answer cannot be read.", cause);
    }
    if (cause instanceof HttpTimeoutException) {
      return new NoAnswerException("The service did not answer in time.", cause);
    }
    if (cause instanceof InterruptedException) {
      return new NoAnswerException("Interrupted while waiting for the service.", cause);
    }
    if (cause != null) {
      return new NoAnswerException("The service cannot be reached.", cause);
    }
    if (failure.getResponseHeaders() == null) {
      return new IllegalArgumentException(failure.getMessage(), failure);
    }
    return new ProblemException(
        ProblemDocument.read(failure.getCode(), failure.getResponseBody()),
        RetryAfter.of(failure.getResponseHeaders(), now),
        failure);
  }
}
