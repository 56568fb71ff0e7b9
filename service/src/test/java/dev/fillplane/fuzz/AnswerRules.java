package dev.fillplane.fuzz;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Set;

/** What holds of every answer, whatever was asked. */
final class AnswerRules {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final ContractOracle contract;
  private final Set<String> codes;

  /**
   * The rules.
   *
   * @param codes of all findings that there are
   */
  AnswerRules(ContractOracle contract, Set<String> codes) {
    this.contract = contract;
    this.codes = codes;
  }

  /**
   * What breaks a rule, if anything does.
   *
   * @param asked the body as a tree; missing where it was none
   */
  Optional<String> broken(Operation operation, JsonNode asked, Reply reply) {
    if (reply.status() >= 500) {
      return Optional.of("status " + reply.status() + " " + reply.text());
    }
    var types = operation.answers().get(reply.status());
    if (types == null) {
      return Optional.of("a status that the contract does not tell: " + reply.status());
    }
    String schema = types.get(reply.mediaType());
    if (schema == null) {
      return Optional.of("a media type that the contract does not tell: " + reply.mediaType());
    }
    return switch (reply.mediaType()) {
      case "application/problem+json" -> problem(schema, asked, tree(reply.text()));
      case Operation.LINES -> lines(schema, reply);
      case Operation.JSON, "application/geo+json" -> value(schema, tree(reply.text()));
      default -> Papers.broken(reply);
    };
  }

  private Optional<String> lines(String schema, Reply reply) {
    return reply
        .text()
        .lines()
        .map(line -> value(schema, tree(line)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<String> value(String schema, JsonNode value) {
    String misfits = contract.misfits(schema, value);
    if (!misfits.isEmpty()) {
      return Optional.of("the answer does not fit the contract: " + misfits);
    }
    if (notFinite(value)) {
      return Optional.of("a number that is none: " + value);
    }
    boolean plan = value.has("depth") && value.has("pour");
    return plan ? PlanSums.broken(value) : Optional.empty();
  }

  /** Numbers that are none are written as texts. */
  private static boolean notFinite(JsonNode value) {
    if (value.isContainerNode()) {
      for (JsonNode part : value) {
        if (notFinite(part)) {
          return true;
        }
      }
    }
    return value.isTextual() && Set.of("Infinity", "-Infinity").contains(value.textValue());
  }

  private Optional<String> problem(String schema, JsonNode asked, JsonNode problem) {
    Optional<String> wrong = value(schema, problem);
    if (wrong.isPresent()) {
      return wrong;
    }
    for (JsonNode error : problem.get("errors")) {
      String code = error.get("code").textValue();
      if (!codes.contains(code)) {
        return Optional.of("an unknown code: " + code);
      }
      String detail = error.get("detail").textValue();
      if (!detail.contains("jndi") && detail.matches("(?s).*\\{[a-z][A-Za-z]*}.*")) {
        return Optional.of("a sentence that is not filled in: " + detail);
      }
      if (!asked.isMissingNode() && !leads(error.get("pointer").textValue(), asked)) {
        return Optional.of("a pointer to nowhere: " + error);
      }
    }
    return Optional.empty();
  }

  /** Whether a place is there, or would be if what may be told were told. */
  private static boolean leads(String pointer, JsonNode asked) {
    JsonNode here = asked;
    for (JsonPointer left = JsonPointer.compile(pointer.substring(1));
        !left.matches();
        left = left.tail()) {
      JsonNode next =
          here.isArray()
              ? here.path(left.getMatchingIndex())
              : here.path(left.getMatchingProperty());
      if (next.isMissingNode()) {
        return !here.isArray();
      }
      here = next;
    }
    return true;
  }

  private static JsonNode tree(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
