package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Tells callers who use what the contract marks as {@code deprecated}: since when it is
 * (Deprecation, RFC 9745) and when it goes (Sunset, RFC 8594). The contract says both beside the
 * mark, as {@code x-deprecated-at} and {@code x-sunset}.
 */
final class Deprecations {

  private static final DateTimeFormatter HTTP_DATE =
      DateTimeFormatter.ofPattern("EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.ROOT);
  private static final List<String> METHODS = List.of("get", "post", "put", "delete", "patch");

  private final JsonNode contract;

  Deprecations(JsonNode contract) {
    this.contract = contract;
  }

  /** Since when something is deprecated, and when it goes. */
  record Mark(LocalDate at, Optional<LocalDate> sunset) {

    Mark {
      if (sunset.isPresent() && sunset.get().isBefore(at)) {
        throw new IllegalArgumentException("it would go before it is deprecated: " + sunset.get());
      }
    }

    /** The mark of an operation, a parameter or a property; empty if it is not deprecated. */
    static Optional<Mark> of(JsonNode node) {
      if (!node.path("deprecated").asBoolean()) {
        return Optional.empty();
      }
      Optional<LocalDate> sunset =
          Optional.ofNullable(node.get("x-sunset")).map(date -> LocalDate.parse(date.asText()));
      return Optional.of(new Mark(LocalDate.parse(node.path("x-deprecated-at").asText()), sunset));
    }
  }

  /** Adds what tells it to every operation that is deprecated, or takes something that is. */
  void handle(JavalinConfig config) {
    for (Map.Entry<String, JsonNode> path : contract.get("paths").properties()) {
      for (String method : METHODS) {
        JsonNode operation = path.getValue().path(method);
        Optional<Mark> whole = Mark.of(operation);
        DeprecatedParts parts = DeprecatedParts.of(operation, contract);
        if (whole.isPresent() || !parts.isEmpty()) {
          config.routes.beforeMatched(
              path.getKey(), context -> tell(context, method, whole, parts));
        }
      }
    }
  }

  private static void tell(
      Context context, String method, Optional<Mark> whole, DeprecatedParts parts) {
    if (!context.method().name().equalsIgnoreCase(method)) {
      return;
    }
    List<Mark> marks = new ArrayList<>(parts.usedBy(context));
    whole.ifPresent(marks::add);
    marks.stream().map(Mark::at).min(Comparator.naturalOrder()).ifPresent(at -> since(context, at));
    marks.stream()
        .flatMap(mark -> mark.sunset().stream())
        .min(Comparator.naturalOrder())
        .ifPresent(
            date -> context.header("Sunset", HTTP_DATE.format(date.atStartOfDay(ZoneOffset.UTC))));
  }

  /** The contract is where more about it stands. */
  private static void since(Context context, LocalDate at) {
    context.header("Deprecation", "@" + at.atStartOfDay(ZoneOffset.UTC).toEpochSecond());
    context
        .res()
        .addHeader("Link", "</openapi.yaml>; rel=\"deprecation\"; type=\"application/yaml\"");
  }
}
