package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.KeyFile;
import dev.fillplane.web.key.NewKey;
import dev.fillplane.web.key.Scope;
import dev.fillplane.web.watch.AdminServer;
import dev.fillplane.web.watch.Metrics;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is seen of the service from outside: its log, its numbers, its traces. */
class SeenTest {

  private static final String SECRET_NAME = "Villa-Wisteria";
  private static final NewKey KEY =
      NewKey.make(
          new NewKey.Wish(
              "a test", List.of(Scope.CALCULATE), List.of(), OptionalInt.empty(), Optional.empty()),
          LocalDate.of(2026, 3, 1));

  @TempDir private static Path folder;
  private static Server server;
  private static AdminServer admin;

  @BeforeAll
  static void start() throws IOException {
    Path file = folder.resolve("keys.json");
    KeyFile.write(file, List.of(KEY.key()));
    Metrics metrics = new Metrics();
    metrics.build("a version", "a commit");
    admin = AdminServer.start(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), metrics);
    Access access = Access.withKeys(KeyBook.open(file, text -> {}));
    server = Server.start(Settings.at("127.0.0.1", 0).withAccess(access), metrics);
  }

  @AfterAll
  static void stop() {
    server.close();
    admin.close();
  }

  // --- the log

  @Test
  void aPlanLeavesOneLine() {
    ObjectNode request = RunningService.sample().put("reference", SECRET_NAME);
    try (CaughtLog log = CaughtLog.begin()) {
      Response answer =
          given()
              .header("X-Request-Id", "one-line")
              .header("traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01")
              .contentType("application/json")
              .queryParam("layers", SECRET_NAME)
              .body(request.toString())
              .post("/v1/plans");
      assertEquals(200, answer.statusCode());
      Map<String, Object> line = log.lineOf("one-line");
      assertEquals("4bf92f3577b34da6a3ce929d0e0e4736", line.get("trace"));
      assertEquals("POST", line.get("method"));
      assertEquals("/v1/plans", line.get("route"));
      assertEquals(200, line.get("status"));
      assertEquals(KEY.key().id(), line.get("key"));
      assertEquals(3L, line.get("rooms"));
      assertEquals(60L, line.get("readings"));
      assertEquals((long) answer.jsonPath().getList("depth.grid.depths").size(), line.get("cells"));
      assertEquals((long) request.toString().length(), line.get("in"));
      assertTrue((long) line.get("out") > 10_000, line.toString());
      assertTrue((double) line.get("ms") > 0, line.toString());
      log.tellsNothingOf(SECRET_NAME, secret(), "levelling", "layers");
    }
  }

  /** Whatever is refused is told with its kind, and nothing of what was sent. */
  @Test
  void whatIsRefusedIsToldByItsKind() {
    try (CaughtLog log = CaughtLog.begin()) {
      given()
          .header("X-Request-Id", "unfit")
          .contentType("application/json")
          .body("{\"" + SECRET_NAME + "\": 1}")
          .post("/v1/plans");
      given()
          .header("X-Request-Id", "no-json")
          .contentType("application/json")
          .body("{\"" + SECRET_NAME + "\": ")
          .post("/v1/bag-counts");
      given().header("X-Request-Id", "no-path").get("/" + SECRET_NAME + "?q=" + SECRET_NAME);
      RunningService.to(server)
          .header("X-Request-Id", "no-key")
          .header("Authorization", "Bearer fp_" + SECRET_NAME)
          .get("/v1/methods");
      RunningService.to(server)
          .header("X-Request-Id", SECRET_NAME + " is no word")
          .header("traceparent", SECRET_NAME)
          .get("/v1/methods");
      assertEquals("invalid", log.lineOf("unfit").get("problem"));
      assertEquals("not-json", log.lineOf("no-json").get("problem"));
      assertEquals("none", log.lineOf("no-path").get("route"));
      assertEquals("not-found", log.lineOf("no-path").get("problem"));
      assertEquals("no-key", log.lineOf("no-key").get("problem"));
      log.tellsNothingOf(SECRET_NAME, secret());
    }
  }

  // --- traces

  @Test
  void aProblemTellsItsTrace() {
    String id = "0af7651916cd43dd8448eb211c80319c";
    Response known =
        given().header("traceparent", "00-" + id + "-b7ad6b7169203331-01").get("/v1/nothing");
    assertEquals(id, known.path("traceId"));
    assertTrue(
        known.header("traceresponse").matches("00-" + id + "-[0-9a-f]{16}-01"),
        known.header("traceresponse"));
    assertFalse(known.header("traceresponse").contains("b7ad6b7169203331"));
    Response other = given().header("traceparent", "00-" + id + "-nonsense-01").get("/v1/nothing");
    assertNotEquals(id, other.path("traceId"));
    assertTrue(other.header("traceresponse").contains(other.<String>path("traceId")));
  }

  // --- numbers

  @Test
  void aPlanIsCounted() {
    double plans = number("fillplane_http_request_seconds_count", "/v1/plans", "2xx");
    double readings = number("fillplane_plan_readings_count");
    assertEquals(200, post("/v1/plans", RunningService.sample()).statusCode());
    assertEquals(plans + 1, number("fillplane_http_request_seconds_count", "/v1/plans", "2xx"));
    assertEquals(readings + 1, number("fillplane_plan_readings_count"));
    double refused = number("fillplane_problems_total", "\"no-key\"");
    RunningService.to(server).get("/v1/methods");
    assertEquals(refused + 1, number("fillplane_problems_total", "\"no-key\""));
    assertEquals(1, number("fillplane_build_info", "a version", "a commit"));
    assertTrue(number("jvm_memory_used_bytes", "heap") > 1e6);
    assertTrue(number("fillplane_http_request_seconds_bucket", "/v1/plans", "le=\"+Inf\"") >= 1);
  }

  /** No caller makes the series grow. */
  @Test
  void oddRequestsAddNoSeries() {
    odd(0);
    long series = text().lines().filter(line -> line.startsWith("fillplane_")).count();
    for (int i = 1; i <= 1000; i++) {
      odd(i);
    }
    assertEquals(series, text().lines().filter(line -> line.startsWith("fillplane_")).count());
  }

  private static void odd(int i) {
    given().header("X-Request-Id", "odd-" + i).get("/odd/" + i);
    if (i % 100 == 0) {
      given().get("/v1/tolerances/odd-" + i);
      given().get("/v1/jobs/odd-" + i);
      RunningService.to(server).request("ODD" + i, "/v1/plans");
      RunningService.to(server).header("Authorization", "Bearer fp_odd" + i).get("/v1/methods");
    }
  }

  @Test
  void nothingElseIsOnTheAdminPort() {
    assertEquals(404, RestAssured.get(adminUri() + "/").statusCode());
    assertEquals(404, RestAssured.get(adminUri() + "/metrics/more").statusCode());
    assertEquals(405, RestAssured.post(adminUri() + "/metrics").statusCode());
    assertEquals(404, given().get("/metrics").statusCode());
  }

  // --- how

  private static RequestSpecification given() {
    return RunningService.given(server).header("Authorization", "Bearer " + KEY.text());
  }

  private static Response post(String path, ObjectNode body) {
    return given().contentType("application/json").body(body.toString()).post(path);
  }

  private static String secret() {
    return KEY.text().substring(KEY.text().lastIndexOf('_') + 1);
  }

  private static String adminUri() {
    return "http://127.0.0.1:" + admin.port();
  }

  private static String text() {
    Response answer = RestAssured.get(adminUri() + "/metrics");
    assertEquals("text/plain; version=0.0.4; charset=utf-8", answer.contentType());
    return answer.asString();
  }

  /** The number of the first line of a name with some labels; 0 where there is none. */
  private static double number(String name, String... labels) {
    return text()
        .lines()
        .filter(line -> line.startsWith(name + "{") || line.startsWith(name + " "))
        .filter(line -> List.of(labels).stream().allMatch(line::contains))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .findFirst()
        .orElse(0);
  }
}
