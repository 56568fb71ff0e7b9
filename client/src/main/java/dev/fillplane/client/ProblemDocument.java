package dev.fillplane.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A problem document (RFC 9457) read leniently: what is missing or odd gets its default. */
record ProblemDocument(
    URI type,
    String title,
    int status,
    Optional<String> detail,
    Optional<URI> instance,
    Optional<String> requestId,
    List<Problem> errors,
    int more) {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final URI BLANK = URI.create("about:blank");

  ProblemDocument {
    errors = List.copyOf(errors);
  }

  static ProblemDocument read(int status, String body) {
    return read(status, tree(body));
  }

  static ProblemDocument read(int status, JsonNode json) {
    return new ProblemDocument(
        text(json, "type").flatMap(ProblemDocument::uri).orElse(BLANK),
        text(json, "title").orElse("HTTP status " + status),
        status,
        text(json, "detail"),
        text(json, "instance").flatMap(ProblemDocument::uri),
        text(json, "requestId"),
        errors(json.path("errors")),
        json.path("more").asInt(0));
  }

  /** The whole in one line of text. */
  String sentence() {
    StringBuilder text = new StringBuilder(title).append(" (").append(status).append(')');
    detail.ifPresent(said -> text.append(": ").append(said));
    for (Problem error : errors) {
      text.append("; ").append(error.pointer()).append(' ').append(error.detail());
    }
    if (more > 0) {
      text.append("; and ").append(more).append(" more");
    }
    return text.toString();
  }

  private static JsonNode tree(String body) {
    if (body == null) {
      return MissingNode.getInstance();
    }
    try {
      return JSON.readTree(body);
    } catch (JsonProcessingException e) {
      return MissingNode.getInstance();
    }
  }

  private static List<Problem> errors(JsonNode json) {
    List<Problem> errors = new ArrayList<>();
    for (JsonNode error : json) {
      errors.add(
          new Problem(
              text(error, "code").orElse(""),
              text(error, "pointer").orElse("#"),
              text(error, "detail").orElse("")));
    }
    return errors;
  }

  private static Optional<String> text(JsonNode json, String name) {
    return Optional.ofNullable(json.path(name).textValue());
  }

  private static Optional<URI> uri(String text) {
    try {
      return Optional.of(new URI(text));
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }
}
