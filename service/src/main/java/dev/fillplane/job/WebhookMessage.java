package dev.fillplane.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.trace.Trace;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a receiver is told: that something happened, and where to read more. The same at every
 * attempt, byte for byte.
 *
 * @param id by which the receiver knows a message that comes twice
 * @param type what happened, in words with dots between
 * @param timestamp when it happened
 * @param data few and short: ids, a state, a link
 * @param trace that the message carries on, in headers of its own
 */
public record WebhookMessage(
    String id, String type, Instant timestamp, Map<String, String> data, Optional<Trace> trace) {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Checks itself: a dot in the id could shift what is signed. */
  public WebhookMessage {
    if (!id.matches("[A-Za-z0-9_-]{1,100}")) {
      throw new IllegalArgumentException("The id of a message has letters, digits, _ and -: " + id);
    }
    if (!type.matches("[a-z_]+(\\.[a-z_]+)*")) {
      throw new IllegalArgumentException("The type of a message is words and dots: " + type);
    }
    data = new LinkedHashMap<>(data);
  }

  /** In the order in which it was told. */
  @Override
  public Map<String, String> data() {
    return new LinkedHashMap<>(data);
  }

  /** The body that is sent and signed. */
  public byte[] body() {
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("type", type);
    body.put("timestamp", timestamp.toString());
    body.put("data", data);
    try {
      return JSON.writeValueAsString(body).getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("texts can be written", e);
    }
  }
}
