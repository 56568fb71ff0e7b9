package dev.fillplane.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.model.Plan;
import dev.fillplane.client.generated.model.PlanRequest;
import java.io.IOException;
import java.util.Iterator;
import java.util.Objects;
import java.util.Optional;

/** Requests and answers of a stream as lines of JSON. */
final class PlanJson {
  private static final ObjectMapper JSON = ApiClient.createDefaultObjectMapper();
  private static final int UNPROCESSABLE = 422;

  private PlanJson() {}

  static Iterator<byte[]> lines(Iterator<PlanRequest> requests) {
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return requests.hasNext();
      }

      @Override
      public byte[] next() {
        return line(Objects.requireNonNull(requests.next(), "a request of a stream"));
      }
    };
  }

  private static byte[] line(PlanRequest request) {
    try {
      return JSON.writeValueAsBytes(request);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("A request that cannot be written as JSON.", e);
    }
  }

  /** The answer of a line: a plan, or {@code {line, errors}} and what else a problem has. */
  static PlanLine answer(long number, byte[] line) throws IOException {
    JsonNode json = JSON.readTree(line);
    if (json.has("errors")) {
      int status = json.path("status").asInt(UNPROCESSABLE);
      ProblemDocument document = ProblemDocument.read(status, json);
      var problem = new ProblemException(document, Optional.empty(), null);
      return new PlanLine(number, Optional.empty(), Optional.of(problem));
    }
    Plan plan = JSON.treeToValue(json, Plan.class);
    return new PlanLine(number, Optional.of(plan), Optional.empty());
  }
}
