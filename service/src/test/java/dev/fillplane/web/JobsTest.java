package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Jobs through the front door. */
@Timeout(120)
class JobsTest {

  /** An invented rectangle of a name of its own; each is a little larger than the last. */
  private static ObjectNode unit(int number) {
    ObjectNode unit = RunningService.example("rectangle.json");
    unit.put("reference", "flat " + number).put("seed", number);
    return unit;
  }

  private static ObjectNode request(JsonNode... units) {
    ObjectNode request = JsonNodeFactory.instance.objectNode();
    ArrayNode plans = request.putArray("plans");
    for (JsonNode unit : units) {
      plans.add(unit);
    }
    return request;
  }

  private static Response make(Object request) {
    return RunningService.post("/v1/jobs", request);
  }

  private static Response upload(String lines, String... parameters) {
    var request = RunningService.given();
    for (int i = 0; i < parameters.length; i += 2) {
      request = request.queryParam(parameters[i], parameters[i + 1]);
    }
    return request
        .contentType("application/x-ndjson")
        .body(lines.getBytes(StandardCharsets.UTF_8))
        .post("/v1/job-uploads");
  }

  private static Response keyed(String key, Object request) {
    return RunningService.given()
        .contentType("application/json")
        .header("Idempotency-Key", key)
        .body(request.toString())
        .post("/v1/jobs");
  }

  private static Response get(String path) {
    return RunningService.given().get(path);
  }

  private static String taken(Response answer) {
    assertEquals(202, answer.statusCode(), answer.asString());
    assertEquals("/v1/jobs/" + answer.path("id"), answer.header("Location"));
    assertTrue(Integer.parseInt(answer.header("Retry-After")) >= 1);
    return answer.header("Location");
  }

  private static Response ended(String job) {
    Response answer = get(job);
    while (List.of("queued", "running").contains(answer.<String>path("state"))) {
      assertTrue(Integer.parseInt(answer.header("Retry-After")) >= 1);
      LockSupport.parkNanos(20_000_000);
      answer = get(job);
    }
    assertNull(answer.header("Retry-After"));
    return answer;
  }

  private static void refused(Response answer, String... codesAndPointers) {
    assertEquals(422, answer.statusCode(), answer.asString());
    List<String> told = new ArrayList<>();
    for (Map<String, String> error : answer.<List<Map<String, String>>>path("errors")) {
      told.add(error.get("code"));
      told.add(error.get("pointer"));
    }
    assertEquals(List.of(codesAndPointers), told);
  }

  @Test
  void plansAreThoseOfTheUnitsAlone() {
    String job = taken(make(request(unit(1), unit(2), unit(3))));
    Response ended = ended(job);
    assertEquals("finished", ended.path("state"));
    assertEquals(3, ended.<Integer>path("done"));
    assertEquals(3, ended.<Integer>path("of"));
    assertEquals(0, ended.<Integer>path("failed"));
    String page = get(job + "/plans").asString();
    for (int number = 1; number <= 3; number++) {
      String alone = RunningService.post("/v1/plans", unit(number)).asString();
      String item =
          "{\"unit\":%d,\"reference\":\"flat %d\",\"state\":\"planned\",\"plan\":%s}"
              .formatted(number - 1, number, alone);
      assertTrue(page.contains(item), "flat " + number);
    }
  }

  /** Against the contract, or against sense: its problem stands in its place. */
  @Test
  void aUnitThatCannotBePlannedTellsItsProblem() {
    ObjectNode unknown = unit(1).put("tarket", 1);
    ObjectNode senseless = RunningService.example("bad-request.json").put("reference", "bad");
    String job = taken(make(request(unknown, senseless, unit(3))));
    Response ended = ended(job);
    assertEquals("finished", ended.path("state"));
    assertEquals(2, ended.<Integer>path("failed"));
    assertEquals(List.of("flat 1", "bad"), ended.path("failures.reference"));
    Response page = get(job + "/plans");
    assertEquals(List.of("failed", "failed", "planned"), page.path("items.state"));
    sameProblem(unknown, page, 0);
    sameProblem(senseless, page, 1);
    assertEquals(1, get(job + "/order").<Integer>path("planned"));
    assertEquals(3, get(job + "/order").<Integer>path("of"));
  }

  private static void sameProblem(JsonNode unit, Response page, int item) {
    Map<String, Object> alone = RunningService.post("/v1/plans", unit).path("");
    alone.keySet().removeAll(List.of("requestId", "traceId"));
    assertEquals(alone, page.path("items[" + item + "].problem"));
  }

  @Test
  void pagesFollowOneAnother() {
    String job = taken(make(request(unit(1), unit(2), unit(3), unit(4), unit(5))));
    ended(job);
    List<String> references = new ArrayList<>();
    String next = "";
    int pages = 0;
    while (next != null) {
      Response page = get(job + "/plans?limit=2" + next);
      references.addAll(page.path("items.reference"));
      String cursor = page.path("nextCursor");
      next = cursor == null ? null : "&cursor=" + cursor;
      pages++;
    }
    assertEquals(List.of("flat 1", "flat 2", "flat 3", "flat 4", "flat 5"), references);
    assertEquals(3, pages);
  }

  @Test
  void cursorsBelongToTheirJob() {
    String job = taken(make(request(unit(1), unit(2))));
    String other = taken(make(request(unit(3), unit(4))));
    String cursor = get(other + "/plans?limit=1").path("nextCursor");
    refused(get(job + "/plans?cursor=" + cursor), "cursor-of-another-job", "#/cursor");
    refused(get(job + "/plans?cursor=next"), "cursor-unknown", "#/cursor");
    assertEquals(400, get(job + "/plans?limit=0").statusCode());
    assertEquals(400, get(job + "/plans?limit=101").statusCode());
    assertEquals(400, get(job + "/plans?page=2").statusCode());
  }

  @Test
  void jobsThatAreNotThere() {
    String path = "/v1/jobs/" + UUID.randomUUID();
    for (String part : List.of("", "/plans", "/order")) {
      assertEquals(404, get(path + part).statusCode(), part);
    }
    assertEquals(404, RunningService.given().delete(path).statusCode());
  }

  @Test
  void orderIsForAllUnits() {
    ObjectNode request = request(unit(1), unit(2), unit(3), unit(4));
    request.putObject("deliveries").put("unitsPerDay", 2);
    String job = taken(make(request));
    ended(job);
    int singles = 0;
    for (int number = 1; number <= 4; number++) {
      Response alone = RunningService.post("/v1/plans", unit(number));
      singles += alone.<Integer>path("quantities.bags.order");
    }
    Response order = get(job + "/order");
    assertEquals(singles, order.<Integer>path("materials[0].sumOfSingles"));
    int bags = order.path("materials[0].order");
    assertEquals(singles - bags, order.<Integer>path("materials[0].saved"));
    assertEquals(List.of(1, 2), order.path("materials[0].deliveries.day"));
    assertEquals("flat 3", order.path("materials[0].deliveries[1].from"));
    assertEquals(25, order.jsonPath().getDouble("materials[0].bagMass"), 1e-9);
    Response us = get(job + "/order?units=us");
    assertEquals(55.1, us.jsonPath().getDouble("materials[0].bagMass"), 0.02);
    assertEquals(bags, us.<Integer>path("materials[0].order"));
  }

  @Test
  void linesAreUnits() {
    String lines = unit(1) + "\r\n\n" + unit(2);
    String job =
        taken(upload(lines, "confidence", "0.95", "unitsPerDay", "1", "bagsPerPallet", "10"));
    assertEquals("finished", ended(job).path("state"));
    Response order = get(job + "/order");
    assertEquals(0.95, order.jsonPath().getDouble("confidence"), 1e-12);
    assertEquals(10, order.<Integer>path("materials[0].bagsPerPallet"));
    assertEquals(2, order.<List<?>>path("materials[0].deliveries").size());
    String alone = RunningService.post("/v1/plans", unit(2)).asString();
    assertTrue(get(job + "/plans").asString().contains(alone));
  }

  @Test
  void jobsThatAreNone() {
    refused(make(request()), "too-few", "#/plans");
    refused(make("{}"), "missing", "#/plans");
    refused(make("[]"), "wrong-type", "#");
    refused(make("{\"plans\":{}}"), "wrong-type", "#/plans");
    ObjectNode twice = unit(2).put("reference", "flat 1");
    ObjectNode none = unit(3);
    none.remove("reference");
    refused(
        make(request(unit(1), twice, none, unit(4).put("reference", "a\u0007"))),
        "reference-taken",
        "#/plans/1/reference",
        "missing",
        "#/plans/2/reference",
        "bad-text",
        "#/plans/3/reference");
    ObjectNode terms = request(unit(1)).put("confidence", 2).put("unit", "m");
    terms.putObject("webhook").put("url", "ftp://x.example/");
    Response faults = make(terms);
    assertEquals(422, faults.statusCode());
    assertEquals(3, faults.<List<?>>path("errors").size(), faults.asString());
    refused(make("{\"plans\":[3]}"), "wrong-type", "#/plans/0");
    assertEquals(400, make("").statusCode());
    assertEquals(400, make("{\"plans\":[{\"reference\":\"a\"}").statusCode());
    assertEquals(400, make(request(unit(1)) + "x").statusCode());
  }

  /** Messages of this service stay out of private networks. */
  @Test
  void webhooksThatLeadInside() {
    ObjectNode inside = request(unit(1));
    inside.putObject("webhook").put("url", "https://127.0.0.1/told");
    refused(make(inside), "webhook-private-address", "#/webhook/url");
    refused(
        upload(unit(1).toString(), "webhook", "http://shop.example/told"),
        "webhook-not-https",
        "#/webhook/url");
  }

  @Test
  void moreUnitsThanAreTaken() {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i <= 10_000; i++) {
      lines.append("{\"reference\":\"").append(i).append("\"}\n");
    }
    refused(upload(lines.toString()), "too-many", "#/lines");
    String plans = lines.toString().trim().replace('\n', ',');
    refused(make("{\"plans\":[" + plans + "]}"), "too-many", "#/plans");
  }

  @Test
  void linesThatAreNone() {
    refused(
        upload(unit(1) + "\n[]\n{\"reference\"\n" + unit(1) + "\n{} {}"),
        "line-no-object",
        "#/lines/2",
        "line-no-object",
        "#/lines/3",
        "reference-taken",
        "#/lines/4/reference",
        "line-no-object",
        "#/lines/5");
    refused(upload("\n \n"), "too-few", "#/plans");
    refused(
        upload(unit(1).toString(), "unitsPerDay", "few"), "wrong-type", "#/deliveries/unitsPerDay");
    assertEquals(400, upload(unit(1).toString(), "unit", "m").statusCode());
    assertEquals(
        415, RunningService.post("/v1/job-uploads", unit(1)).statusCode(), "no lines of JSON");
  }

  /** Bytes are cut out of the body, so that their encoding matters. */
  @Test
  void encodings() {
    String text = request(unit(1).put("reference", "\u00dcber 2\u00b2 \ud83c\udfe0")).toString();
    String job = taken(post(("\ufeff" + text).getBytes(StandardCharsets.UTF_8)));
    ended(job);
    assertEquals(
        List.of("\u00dcber 2\u00b2 \ud83c\udfe0"),
        get(job + "/plans").path("items.plan.reference"));
    Response other = post(text.getBytes(StandardCharsets.UTF_16LE));
    assertEquals(400, other.statusCode());
    assertTrue(other.asString().contains("UTF-8"), other.asString());
  }

  private static Response post(byte[] body) {
    return RunningService.given().contentType("application/json").body(body).post("/v1/jobs");
  }

  @Test
  void theSameKeyGetsTheSameAnswer() {
    String key = UUID.randomUUID().toString();
    ObjectNode request = request(unit(1));
    Response first = keyed('"' + key + '"', request);
    String job = taken(first);
    assertNull(first.header("Idempotency-Replayed"));
    ended(job);
    for (String form : List.of('"' + key + '"', key)) {
      Response again = keyed(form, request);
      assertEquals(job, taken(again));
      assertEquals(first.asString(), again.asString());
      assertEquals("true", again.header("Idempotency-Replayed"));
    }
    Response other = keyed(key, request(unit(2)));
    assertEquals(422, other.statusCode());
    assertEquals("urn:fillplane:problem:key-reused", other.path("type"));
    assertNotEquals(job, taken(keyed(UUID.randomUUID().toString(), request)));
  }

  @Test
  void keysThatAreNone() {
    for (String key : List.of("\"\"", "a b", "\"a", "x".repeat(201))) {
      assertEquals(400, keyed(key, request(unit(1))).statusCode(), key);
    }
    assertEquals(202, keyed("\"a \\\" b\"", request(unit(1))).statusCode());
  }

  /** A request that is refused takes no key. */
  @Test
  void aRefusedRequestMayBeMendedUnderItsKey() {
    String key = UUID.randomUUID().toString();
    assertEquals(422, keyed(key, request()).statusCode());
    taken(keyed(key, request(unit(1))));
  }

  @Test
  void cancelledThenForgotten() {
    List<JsonNode> units = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      units.add(unit(i));
    }
    String job = taken(make(request(units.toArray(JsonNode[]::new))));
    assertEquals(204, RunningService.given().delete(job).statusCode());
    Response cancelled = get(job);
    assertEquals("cancelled", cancelled.path("state"));
    assertFalse(cancelled.<String>path("endedAt").isEmpty());
    assertEquals(60, cancelled.<Integer>path("of"));
    assertEquals(20, get(job + "/plans").<List<?>>path("items").size());
    assertEquals(204, RunningService.given().delete(job).statusCode());
    assertEquals(404, get(job).statusCode());
  }

  @Test
  void limitsAreTold() {
    Response answer = get("/v1/capabilities");
    assertEquals(10_000, answer.<Integer>path("limits.jobUnits"));
    assertEquals(168, answer.<Integer>path("limits.jobHours"));
  }
}
