package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Trees;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Plans of the running service, each held to the rules of every answer. */
record Plans(FuzzedService service) {

  /** That a request is refused, so that nothing can be compared. */
  static final class NoPlan extends RuntimeException {
    private static final long serialVersionUID = 1;

    private NoPlan(String problem) {
      super(problem);
    }
  }

  /** The plan; {@link NoPlan} where there is none. */
  JsonNode of(ObjectNode request) {
    return at("/v1/plans", request);
  }

  JsonNode at(String path, ObjectNode request) {
    Reply reply = posted(path, request);
    if (reply.status() == 422) {
      throw new NoPlan(reply.text());
    }
    return Trees.of(reply.body());
  }

  private Reply posted(String path, ObjectNode request) {
    Operation operation = service.operation(path);
    Reply reply = service.post(operation, Texts.of(request));
    Optional<String> broken = service.broken(operation, request, reply);
    if (broken.isPresent()) {
      throw new AssertionError(broken.get());
    }
    return reply;
  }

  JsonNode inStream(ObjectNode request) {
    return Trees.of(service.post(service.operation("/v1/plan-streams"), Texts.of(request)).body());
  }

  /** What a validation says otherwise than the plan. */
  String validatedAsPlanned(ObjectNode request) {
    Reply plan = posted("/v1/plans", request);
    Reply told = posted("/v1/plan-validations", request);
    if (plan.status() == 400 || told.status() == 400) {
      return plan.status() == told.status() ? "" : plan.status() + " is not " + told.status();
    }
    JsonNode validation = Trees.of(told.body());
    boolean valid = validation.get("valid").booleanValue();
    Set<String> errors = findings(validation.get("errors"));
    JsonNode planned = Trees.of(plan.body());
    Set<String> of = findings(planned.path("errors"));
    boolean same = planned.has("more") ? errors.containsAll(of) : errors.equals(of);
    return valid == plan.isGood() && same
        ? ""
        : "validated as %s %s, planned as %s %s".formatted(valid, errors, plan.status(), of);
  }

  private static Set<String> findings(JsonNode list) {
    Set<String> findings = new TreeSet<>();
    list.forEach(one -> findings.add(one.get("code").asText() + one.get("pointer").asText()));
    return findings;
  }

  static double number(JsonNode plan, String place) {
    return plan.at(place).doubleValue();
  }

  /** That a number is smaller where it must not be; but for rounding. */
  static String notLess(String place, JsonNode less, JsonNode more) {
    double from = number(less, place);
    double to = number(more, place);
    return to < from - 1e-9 * Math.abs(from) ? "%s: %s, then %s. ".formatted(place, from, to) : "";
  }
}
