package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.openapi.Contract;
import io.restassured.response.Response;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** More heavy work than places: the rest is told so at once, and light work does not notice. */
@Timeout(120)
class OverloadTest {

  private static final Map<String, String> LIGHT =
      Map.of(
          "/v1/bag-counts", "bag-count.json",
          "/v1/mix-checks", "mix-check.json",
          "/v1/air-checks", "air-check.json",
          "/v1/pour-checks", "pour-check.json",
          "/v1/lifting-checks", "lifting-check.json",
          "/v1/dust-checks", "dust-check.json");

  private static final List<String> HEAVY =
      List.of(
          "/v1/plans",
          "/v1/depth-maps",
          "/v1/pour-sheets",
          "/v1/depth-fields",
          "/v1/plan-validations",
          "/v1/comparisons",
          "/v1/line-items",
          "/v1/jobs");

  private final CountDownLatch open = new CountDownLatch(1);
  private Server server;

  @BeforeEach
  void serve() {
    Capacity one = Capacity.usual().withPlaces(1, 1).withPatience(Duration.ofMinutes(10));
    server = Server.start(Settings.at("127.0.0.1", 0).withCapacity(one.withHeldBytes(40_000)));
  }

  @AfterEach
  void stop() {
    open.countDown();
    server.close();
  }

  /** Takes the place and the one that waits for it. */
  private void fill() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    for (int i = 0; i < 2; i++) {
      server
          .lane()
          .submit(
              0,
              () -> {
                begun.countDown();
                hold();
                return "";
              });
    }
    begun.await();
  }

  private void hold() {
    try {
      open.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Response post(String path, String body) {
    return RunningService.given(server).contentType("application/json").body(body).post(path);
  }

  @Test
  void heavyWorkIsRefusedAtOnce() throws Exception {
    fill();
    for (String path : HEAVY) {
      Response refused = post(path, RunningService.sample().toString());
      Refusals.problem(refused, 503, "busy");
      assertEquals("2", refused.header("Retry-After"));
    }
    open.countDown();
    RunningService.until(() -> server.lane().idle());
    assertEquals(200, post("/v1/plans", RunningService.sample().toString()).statusCode());
  }

  @Test
  void lightWorkGoesOn() throws Exception {
    fill();
    for (Map.Entry<String, String> light : LIGHT.entrySet()) {
      String body = Contract.load().example(light.getValue()).toString();
      assertEquals(200, post(light.getKey(), body).statusCode(), light.getKey());
    }
    for (String path : Operations.catalogues()) {
      if (!path.contains("{")) {
        assertEquals(200, RunningService.given(server).get(path).statusCode(), path);
      }
    }
    assertEquals(200, RunningService.given(server).get("/health/ready").statusCode());
  }

  /** Space before the JSON is no reason for light work to be slow. */
  @Test
  void aLargeBodyIsHeavyWhateverItAsks() throws Exception {
    open.countDown();
    String body = Contract.load().example("bag-count.json").toString();
    assertEquals(200, post("/v1/bag-counts", " ".repeat(15_000) + body).statusCode());
    try (Server roomy = Server.start(Settings.at("127.0.0.1", 0))) {
      String large = " ".repeat(Intake.LIGHT_BYTES) + body;
      Response answer =
          RunningService.given(roomy)
              .contentType("application/json")
              .body(large)
              .post("/v1/bag-counts");
      assertEquals(200, answer.statusCode());
      RunningService.until(() -> roomy.lane().ended() == 1);
    }
  }

  @Test
  void theLargestBodyIsWhatTheMemoryBears() {
    assertEquals(
        40_000,
        RunningService.given(server).get("/v1/capabilities").<Integer>path("limits.bodyBytes"));
    assertEquals(
        40_000,
        RunningService.given(server).get("/v1/capabilities").<Integer>path("limits.heldBytes"));
    Refusals.problem(post("/v1/plans", " ".repeat(40_001)), 413, "too-large");
  }

  /** What was announced counts for nothing, what has come counts. */
  @Test
  void bodiesTogetherAreBounded() throws IOException {
    open.countDown();
    String sample = RunningService.sample().toString();
    try (RawCall first = new RawCall(server.port())) {
      first.send(RawCall.post("/v1/plans", 39_900) + " ".repeat(39_000));
      RunningService.until(() -> server.bodies().held() == 39_000);
      Response refused = post("/v1/plans", " ".repeat(33_000) + sample);
      Refusals.problem(refused, 503, "busy");
      assertEquals("5", refused.header("Retry-After"));
      assertTrue(refused.asString().contains("memory"), refused.asString());
      assertEquals(200, post("/v1/plans", sample).statusCode(), "what is small is taken");
      RunningService.until(() -> server.bodies().held() == 39_000);
      first.send(" ".repeat(900));
      assertEquals(400, RawCall.status(first.answer()));
    }
    RunningService.until(() -> server.bodies().held() == 0);
    assertEquals(200, post("/v1/plans", sample).statusCode());
    assertEquals(0, server.bodies().held());
  }
}
