package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.openapi.Contract;
import dev.fillplane.web.RunningService;
import dev.fillplane.web.json.Sentences;
import java.util.List;
import java.util.Optional;

/** The running service with what is known about its answers. */
final class FuzzedService {

  private static final FuzzedService SHARED = new FuzzedService(RunningService.CONTRACT);

  private final List<Operation> operations;
  private final Requests requests;
  private final AnswerRules rules;
  private final Caller caller = new Caller(RunningService.uri());

  private FuzzedService(Contract contract) {
    JsonNode document = contract.document();
    operations = Operation.all(contract);
    rules = new AnswerRules(new ContractOracle(document), Sentences.codes());
    requests = new Requests(document, shownPlans());
  }

  static FuzzedService shared() {
    return SHARED;
  }

  private List<ObjectNode> shownPlans() {
    return operations.stream()
        .filter(operation -> operation.path().equals("/v1/plans"))
        .flatMap(operation -> operation.examples().stream())
        .map(example -> (ObjectNode) example)
        .filter(example -> example.get("units").textValue().equals("metric"))
        .toList();
  }

  List<Operation> operations() {
    return operations;
  }

  /** The operation of a path. */
  Operation operation(String path) {
    return operations.stream()
        .filter(operation -> operation.path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  Requests requests() {
    return requests;
  }

  Reply post(Operation operation, String body) {
    return caller.post(operation, body);
  }

  Reply post(String path, JsonNode body) {
    return caller.post(path, Operation.JSON, Texts.of(body));
  }

  /** The rule that an answer breaks, if it does. */
  Optional<String> broken(Operation operation, JsonNode asked, Reply reply) {
    return rules.broken(operation, asked, reply);
  }

  /** What is wrong with the answer to a text, if anything is. */
  Optional<String> complaint(Operation operation, String body) {
    return complaint(operation, MissingNode.getInstance(), body);
  }

  /** What is wrong with the answer to a body, with the least part of the body that shows it. */
  Optional<String> shrunkComplaint(Operation operation, JsonNode body) {
    Optional<String> complaint = complaint(operation, body, Texts.of(body));
    if (complaint.isEmpty()) {
      return complaint;
    }
    String kind = kind(complaint.get());
    JsonNode least =
        Shrinker.shrink(
            body,
            part ->
                complaint(operation, part, Texts.of(part))
                    .filter(other -> kind(other).equals(kind))
                    .isPresent());
    return Optional.of(complaint.get() + "\n" + Texts.of(least));
  }

  /** Its first words, without the request id. */
  private static String kind(String complaint) {
    return complaint.substring(0, Math.min(40, complaint.length()));
  }

  private Optional<String> complaint(Operation operation, JsonNode asked, String body) {
    try {
      return rules
          .broken(operation, asked, caller.post(operation, body))
          .map(broken -> operation.path() + ": " + broken);
    } catch (AssertionError e) {
      return Optional.of(operation.path() + ": " + e.getMessage());
    }
  }
}
