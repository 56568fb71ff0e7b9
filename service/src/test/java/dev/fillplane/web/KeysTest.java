package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.api.CataloguesApi;
import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.KeyFile;
import dev.fillplane.web.key.NewKey;
import dev.fillplane.web.key.Scope;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A running service that asks for keys. */
class KeysTest {

  private static final String SHOP = "https://shop.example";

  private static final NewKey CALCULATE = make(Scope.CALCULATE, List.of(), OptionalInt.empty());
  private static final NewKey JOBS = make(Scope.JOBS, List.of(), OptionalInt.empty());
  private static final NewKey BROWSER =
      make(Scope.BROWSER, List.of(SHOP, "http://localhost:3000"), OptionalInt.empty());
  private static final NewKey OTHER_SHOP =
      make(Scope.BROWSER, List.of("https://other.example"), OptionalInt.empty());
  private static final NewKey SLOW = make(Scope.CALCULATE, List.of(), OptionalInt.of(2));
  private static final NewKey UNKNOWN = make(Scope.CALCULATE, List.of(), OptionalInt.empty());
  private static final List<Key> KEYS =
      List.of(CALCULATE.key(), JOBS.key(), BROWSER.key(), OTHER_SHOP.key(), SLOW.key());

  /** So that two answers can be compared. */
  private static final Map<String, String> SAME =
      Map.of(
          "X-Request-Id", "same",
          "traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01");

  @TempDir private static Path folder;
  private static Path file;
  private static Server server;

  @BeforeAll
  static void start() throws IOException {
    file = folder.resolve("keys.json");
    KeyFile.write(file, KEYS);
    Access access = Access.withKeys(KeyBook.open(file, text -> {}));
    server = Server.start(Settings.at("127.0.0.1", 0).withAccess(access));
  }

  @BeforeEach
  void keysAsTheyWere() throws IOException {
    KeyFile.write(file, KEYS);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void withoutAKey() {
    Response answer = RunningService.given(server).get("/v1/methods");
    refused(answer, 401, "no-key");
    assertEquals("Bearer realm=\"fillplane\"", answer.header("WWW-Authenticate"));
  }

  /** Nobody learns from an answer whether an id is one. */
  @Test
  void wrongSecretAndUnknownIdGetTheSameAnswer() {
    String wrong = CALCULATE.text().substring(0, 16) + UNKNOWN.text().substring(16);
    Response wrongSecret = with(wrong).headers(SAME).get("/v1/methods");
    Response unknownId = with(UNKNOWN.text()).headers(SAME).get("/v1/methods");
    Response noKey = with("fp_").headers(SAME).get("/v1/methods");
    refused(wrongSecret, 401, "no-key");
    assertEquals(
        "Bearer realm=\"fillplane\", error=\"invalid_token\"",
        wrongSecret.header("WWW-Authenticate"));
    for (Response other : List.of(unknownId, noKey)) {
      assertEquals(wrongSecret.asString(), other.asString());
      assertEquals(
          wrongSecret.headers().asList().stream().map(Object::toString).sorted().toList().size(),
          other.headers().asList().size());
    }
    assertFalse(wrongSecret.asString().contains(wrong.substring(16)));
  }

  @Test
  void otherSchemes() {
    for (String told : List.of("Basic YTpi", CALCULATE.text(), "Bearer", "Bearer ")) {
      Response answer =
          RunningService.given(server).header("Authorization", told).get("/v1/methods");
      refused(answer, 401, "no-key");
    }
    Response small =
        RunningService.given(server)
            .header("Authorization", "bearer  " + CALCULATE.text())
            .get("/v1/methods");
    assertEquals(200, small.statusCode());
  }

  @ParameterizedTest
  @CsvSource({
    "calculate, /v1/methods, 200",
    "jobs, /v1/methods, 200",
    "browser, /v1/methods, 200",
    "calculate, /v1/capabilities, 200",
    "browser, /v1/capabilities, 200",
    "browser, /v1/tolerances/aci-117-flat, 200",
    "calculate, /v1/bag-counts, 200",
    "jobs, /v1/bag-counts, 403",
    "browser, /v1/bag-counts, 200",
    "calculate, /v1/elevations, 200",
    "jobs, /v1/elevations, 403",
    "browser, /v1/elevations, 403",
    "browser, /v1/elevations/, 403",
    "browser, /v1/bag-counts/, 200",
    "jobs, /v1/elevations/, 403",
  })
  void scopes(String scope, String path, int status) {
    NewKey key = scope.equals("calculate") ? CALCULATE : scope.equals("jobs") ? JOBS : BROWSER;
    RequestSpecification request =
        RunningService.to(server)
            .header("Authorization", "Bearer " + key.text())
            .header("Origin", SHOP);
    Response answer =
        path.contains("bag-") || path.contains("elev") ? post(request, path) : request.get(path);
    assertEquals(status, answer.statusCode(), answer.asString());
  }

  private static Response post(RequestSpecification request, String path) {
    String example = path.contains("bag") ? "bag-count.json" : "elevations.json";
    return request
        .contentType("application/json")
        .body(RunningService.example(example).toString())
        .post(path);
  }

  @Test
  void scopeThatIsMissingIsNamed() {
    Response answer = post(with(JOBS.text()), "/v1/elevations");
    refused(answer, 403, "forbidden");
    assertEquals(
        "The key does not allow this; it needs the scope calculate.", answer.path("detail"));
    assertEquals(
        "Bearer realm=\"fillplane\", error=\"insufficient_scope\", scope=\"calculate\"",
        answer.header("WWW-Authenticate"));
  }

  @Test
  void browserKeysAreBoundToTheirOrigins() {
    Response own = post(with(BROWSER.text()).header("Origin", SHOP), "/v1/bag-counts");
    assertEquals(200, own.statusCode());
    assertEquals(SHOP, own.header("Access-Control-Allow-Origin"));
    refused(post(with(BROWSER.text()), "/v1/bag-counts"), 403, "forbidden");
    for (String foreign : List.of("https://foreign.example", "null", "https://shop.example:8443")) {
      Response answer = post(with(BROWSER.text()).header("Origin", foreign), "/v1/bag-counts");
      refused(answer, 403, "forbidden");
      assertNull(answer.header("Access-Control-Allow-Origin"), foreign);
    }
    Response others =
        post(with(BROWSER.text()).header("Origin", "https://other.example"), "/v1/bag-counts");
    refused(others, 403, "forbidden");
  }

  /** Pages tell their keys to everybody; a key of another scope gets no answer into a page. */
  @Test
  void otherKeysHaveNoOrigins() {
    Response answer = post(with(CALCULATE.text()).header("Origin", SHOP), "/v1/bag-counts");
    assertNull(answer.header("Access-Control-Allow-Origin"));
  }

  /** A page has to read why it was refused. */
  @Test
  void refusalsReachThePage() {
    Response noKey = RunningService.given(server).header("Origin", SHOP).get("/v1/methods");
    refused(noKey, 401, "no-key");
    assertEquals(SHOP, noKey.header("Access-Control-Allow-Origin"));
  }

  @Test
  void preflightsNeedNoKey() {
    Response known = preflight("https://other.example");
    assertEquals(204, known.statusCode());
    assertEquals("https://other.example", known.header("Access-Control-Allow-Origin"));
    assertNull(preflight("https://foreign.example").header("Access-Control-Allow-Origin"));
  }

  private static Response preflight(String origin) {
    return RunningService.to(server)
        .header("Origin", origin)
        .header("Access-Control-Request-Method", "POST")
        .options("/v1/bag-counts");
  }

  @Test
  void whatTellsNothingIsOpen() {
    for (String path : List.of("/health/live", "/health/ready", "/openapi.yaml")) {
      assertEquals(200, RunningService.given(server).get(path).statusCode(), path);
    }
    refused(RunningService.given(server).get("/nowhere"), 404, "not-found");
  }

  @Test
  void limitOfAKey() {
    for (int left = 1; left >= 0; left--) {
      Response answer = with(SLOW.text()).get("/v1/methods");
      assertEquals("\"requests\";q=2;w=60", answer.header("RateLimit-Policy"));
      assertEquals("\"requests\";r=" + left + ";t=60", answer.header("RateLimit"));
    }
    Response third = with(SLOW.text()).get("/v1/methods");
    refused(third, 429, "too-many-requests");
    assertNull(with(CALCULATE.text()).get("/v1/methods").header("RateLimit"));
  }

  @Test
  void fileIsEditedWhileTheServiceRuns() throws IOException {
    assertEquals(200, with(CALCULATE.text()).get("/v1/methods").statusCode());
    KeyFile.write(file, List.of(UNKNOWN.key()));
    refused(with(CALCULATE.text()).get("/v1/methods"), 401, "no-key");
    assertEquals(200, with(UNKNOWN.text()).get("/v1/methods").statusCode());
    Files.writeString(file, Files.readString(file).substring(0, 60));
    assertEquals(200, with(UNKNOWN.text()).get("/v1/methods").statusCode());
    refused(with(CALCULATE.text()).get("/v1/methods"), 401, "no-key");
    KeyFile.write(file, KEYS);
    assertEquals(200, with(CALCULATE.text()).get("/v1/methods").statusCode());
  }

  @Test
  void clientSendsItsKey() {
    URI uri = URI.create("http://127.0.0.1:" + server.port());
    FillplaneClient client = FillplaneClient.at(uri).apiKey(CALCULATE.text()).build();
    CataloguesApi catalogues = client.api(CataloguesApi::new);
    assertFalse(client.call(catalogues::listMethods).getItems().isEmpty());
    FillplaneClient stranger = FillplaneClient.at(uri).build();
    CataloguesApi closed = stranger.api(CataloguesApi::new);
    ProblemException refusal =
        Assertions.assertThrows(ProblemException.class, () -> stranger.call(closed::listMethods));
    assertEquals(401, refusal.status());
  }

  // --- how

  private static RequestSpecification with(String key) {
    return RunningService.given(server).header("Authorization", "Bearer " + key);
  }

  private static void refused(Response answer, int status, String kind) {
    assertEquals(status, answer.statusCode(), answer.asString());
    assertEquals("application/problem+json", answer.contentType());
    assertEquals("urn:fillplane:problem:" + kind, answer.path("type"));
    assertFalse(answer.<String>path("detail").isBlank());
  }

  private static NewKey make(Scope scope, List<String> origins, OptionalInt perMinute) {
    return NewKey.make(
        new NewKey.Wish("a test", List.of(scope), origins, perMinute, Optional.empty()),
        LocalDate.of(2026, 3, 1));
  }
}
