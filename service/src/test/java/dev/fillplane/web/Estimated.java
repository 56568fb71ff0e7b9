package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An estimate of a plan request, line by line; prices of tests are invented. */
final class Estimated {

  private final JsonNode answer;

  private Estimated(JsonNode answer) {
    this.answer = answer;
  }

  /** A request of line items for an example of a plan, with parts that single quotes tell. */
  static ObjectNode request(String example, String parts) {
    JsonNode plan = RunningService.example(example);
    ObjectNode request = Refusals.tree("{}").deepCopy();
    request.put("units", plan.get("units").asText()).set("plan", plan);
    return (ObjectNode) MergePatch.merged(request, Refusals.tree(parts));
  }

  static Response post(JsonNode request) {
    return RunningService.post("/v1/line-items", request);
  }

  static Estimated of(JsonNode request) {
    Response answer = post(request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return new Estimated(Trees.of(answer));
  }

  static Estimated of(String example, String parts) {
    return of(request(example, parts));
  }

  JsonNode answer() {
    return answer;
  }

  List<JsonNode> lines() {
    return Trees.elements(answer.get("lines"));
  }

  List<String> codes() {
    return lines().stream().map(line -> line.get("code").textValue()).toList();
  }

  Optional<JsonNode> find(String code) {
    return lines().stream().filter(line -> line.get("code").textValue().equals(code)).findFirst();
  }

  JsonNode line(String code) {
    return find(code).orElseThrow(() -> new AssertionError("no " + code + " in " + codes()));
  }

  /** A number of a line, 0 where it is left out. */
  double number(String code, String part) {
    return line(code).path(part).path("value").asDouble(0);
  }

  double quantity(String code) {
    return number(code, "quantity");
  }

  String amount(String code) {
    return line(code).at("/amount/amount").textValue();
  }

  String total() {
    return answer.at("/totals/total/amount").textValue();
  }

  /** Hours of all labour lines whose code begins so. */
  double hours(String... codes) {
    double sum = 0;
    for (String code : codes) {
      sum += find(code).map(line -> line.at("/quantity/value").doubleValue()).orElse(0.0);
    }
    return sum;
  }

  List<BigDecimal> amounts() {
    List<BigDecimal> amounts = new ArrayList<>();
    for (JsonNode line : lines()) {
      if (line.has("amount")) {
        amounts.add(new BigDecimal(line.at("/amount/amount").textValue()));
      }
    }
    return amounts;
  }

  List<String> warnings() {
    return Trees.elements(answer.get("warnings")).stream()
        .map(warning -> warning.get("code").textValue())
        .toList();
  }
}
