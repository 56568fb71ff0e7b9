package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages of other origins, as browsers let them ask (Fetch standard, "CORS protocol"). */
class CorsTest {

  private static final String SHOP = "https://shop.example";
  private static final String ALLOWED = "Access-Control-Allow-Origin";

  private static Server server;

  @BeforeAll
  static void start() {
    Access access = Access.local().withOrigins(List.of("https://Shop.example:443"));
    server = Server.start(Settings.at("127.0.0.1", 0).withAccess(access));
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/bag-counts",
        "/v1/mix-checks",
        "/v1/air-checks",
        "/v1/pour-checks",
        "/v1/lifting-checks",
        "/v1/dust-checks"
      })
  void lightCalculationsMayBeAskedFor(String path) {
    Response answer = preflight(SHOP, "POST", path);
    assertEquals(204, answer.statusCode());
    assertEquals("", answer.asString());
    assertEquals(SHOP, answer.header(ALLOWED));
    assertEquals("POST", answer.header("Access-Control-Allow-Methods"));
    assertEquals("7200", answer.header("Access-Control-Max-Age"));
    assertTrue(words(answer, "Access-Control-Allow-Headers").contains("content-type"));
    assertTrue(words(answer, "Access-Control-Allow-Headers").contains("authorization"));
    assertNull(answer.header("Access-Control-Allow-Credentials"));
    assertEquals("Origin", answer.header("Vary"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/materials",
        "/v1/coverings",
        "/v1/substrates",
        "/v1/tolerances",
        "/v1/tolerances/aci-117-flat",
        "/v1/methods",
        "/v1/capabilities"
      })
  void cataloguesMayBeRead(String path) {
    assertEquals("GET", preflight(SHOP, "GET", path).header("Access-Control-Allow-Methods"));
    Response answer = RunningService.given(server).header("Origin", SHOP).get(path);
    assertEquals(200, answer.statusCode());
    assertEquals(SHOP, answer.header(ALLOWED));
    assertEquals("Origin", answer.header("Vary"));
    Set<String> seen = words(answer, "Access-Control-Expose-Headers");
    assertTrue(
        seen.containsAll(
            List.of(
                "etag",
                "location",
                "retry-after",
                "ratelimit",
                "ratelimit-policy",
                "deprecation",
                "x-request-id")),
        seen.toString());
    assertNull(answer.header("Access-Control-Allow-Credentials"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/plans",
        "/v1/plan-validations",
        "/v1/comparisons",
        "/v1/depth-maps",
        "/v1/elevations",
        "/v1/flatness-checks",
        "/v1/survey-imports",
        "/health/live",
        "/nowhere"
      })
  void heavyOperationsMayNot(String path) {
    Response asked = preflight(SHOP, "POST", path);
    assertNull(asked.header(ALLOWED));
    assertTrue(asked.statusCode() >= 400, path + " " + asked.statusCode());
    Response posted =
        RunningService.open().header("Origin", SHOP).contentType("application/json").post(path);
    assertNull(posted.header(ALLOWED));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://foreign.example",
        "http://shop.example",
        "https://shop.example:8443",
        "https://shop.example.foreign.example",
        "null",
        "*"
      })
  void otherOriginsMayNot(String origin) {
    Response asked = preflight(origin, "POST", "/v1/bag-counts");
    assertNull(asked.header(ALLOWED));
    assertNull(asked.header("Access-Control-Allow-Methods"));
    Response answer = RunningService.given(server).header("Origin", origin).get("/v1/methods");
    assertNull(answer.header(ALLOWED));
    assertEquals("Origin", answer.header("Vary"));
  }

  /**
   * Answers that are the same for everybody still vary, or a cache gives one page that of another.
   */
  @Test
  void answersVaryWithoutAnOriginAsWell() {
    Response answer = RunningService.given(server).get("/v1/methods");
    assertEquals("Origin", answer.header("Vary"));
    assertNull(answer.header(ALLOWED));
  }

  @Test
  void problemsReachThePage() {
    Response answer =
        RunningService.given(server)
            .header("Origin", SHOP)
            .contentType("application/json")
            .body("{}")
            .post("/v1/bag-counts");
    assertEquals(422, answer.statusCode());
    assertEquals(SHOP, answer.header(ALLOWED));
  }

  @Test
  void noOriginIsKnownUnlessToldOf() {
    Response answer = RunningService.given().header("Origin", SHOP).get("/v1/methods");
    assertEquals(200, answer.statusCode());
    assertNull(answer.header(ALLOWED));
  }

  private static Set<String> words(Response answer, String header) {
    Set<String> words = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    words.addAll(Arrays.asList(answer.header(header).split(", ")));
    return words;
  }

  private static Response preflight(String origin, String method, String path) {
    return RunningService.to(server)
        .header("Origin", origin)
        .header("Access-Control-Request-Method", method)
        .header("Access-Control-Request-Headers", "content-type")
        .options(path);
  }
}
