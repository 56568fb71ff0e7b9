package dev.fillplane.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.job.JobSettings;
import dev.fillplane.job.StoreAddress;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/**
 * Work over the deadline is answered and stopped. What is asked for here would take minutes; so the
 * tests end only because the work does.
 */
@Timeout(60)
class DeadlineTest {

  private static final Duration DEADLINE = Duration.ofMillis(100);

  @TempDir(cleanup = CleanupMode.NEVER)
  private Path folder;

  private Server server;

  @BeforeEach
  void serve() {
    Capacity capacity = Capacity.usual().withPlaces(1, 2).withDeadline(DEADLINE);
    server =
        Server.start(
            Settings.at("127.0.0.1", 0)
                .withCapacity(capacity)
                .withJobs(JobSettings.in(StoreAddress.folder(folder)).withThreads(1)));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  /** A floor cut fine, planned anew for each of twenty crews. */
  private static ObjectNode comparison() {
    ObjectNode request = RunningService.example("comparison.json");
    ((ObjectNode) request.get("base")).set("grid", grid());
    ArrayNode variations = request.putArray("variations");
    for (int i = 0; i < 20; i++) {
      ObjectNode variation = variations.addObject().put("name", "crew " + i);
      variation.putObject("patch").putObject("crew").put("people", 2 + i % 10);
    }
    return request;
  }

  private static ObjectNode fine(String reference) {
    ObjectNode request = RunningService.sample();
    request.set("grid", grid());
    return request.put("reference", reference);
  }

  private static ObjectNode grid() {
    return RunningService.sample().putObject("grid").put("cell", 0.02);
  }

  private Response post(String path, String type, String body) {
    return RunningService.given(server).contentType(type).body(body.getBytes(UTF_8)).post(path);
  }

  private void everyPlaceIsFree() {
    while (!server.lane().idle() || server.lane().room() < 3) {
      LockSupport.parkNanos(1_000_000);
    }
    String light = RunningService.example("rectangle.json").toString();
    int status = post("/v1/plan-validations", "application/json", light).statusCode();
    assertTrue(status == 200 || status == 503, "status " + status);
  }

  @Test
  void aRequestIsAnsweredAndItsPlaceIsFree() {
    for (int i = 0; i < 4; i++) {
      Response answer = post("/v1/comparisons", "application/json", comparison().toString());
      Refusals.problem(answer, 503, "over-deadline");
      assertTrue(answer.asString().contains("Make it smaller"), answer.asString());
      assertEquals(null, answer.header("Retry-After"));
    }
    everyPlaceIsFree();
  }

  @Test
  void aLineOfAStreamIsRefusedAlone() {
    String lines = fine("a") + "\nno line\n";
    Response answer = post("/v1/plan-streams", "application/x-ndjson", lines);
    assertEquals(200, answer.statusCode());
    List<String> told = answer.asString().lines().toList();
    assertTrue(told.get(0).contains("problem:over-deadline"), told.get(0));
    assertTrue(told.get(1).contains("problem:not-json"), told.get(1));
    everyPlaceIsFree();
  }

  @Test
  void aUnitOfAJobFailsAlone() throws IOException {
    String lines = fine("a") + "\n{\"reference\":\"b\"}\n";
    Response taken = post("/v1/job-uploads", "application/x-ndjson", lines);
    assertEquals(202, taken.statusCode(), taken.asString());
    String job = taken.header("Location");
    while (RunningService.given(server).get(job).<Integer>path("done") < 2) {
      LockSupport.parkNanos(20_000_000);
    }
    String plans = RunningService.given(server).get(job + "/plans").asString();
    assertTrue(plans.contains("problem:over-deadline"), plans);
    assertTrue(plans.contains("problem:invalid"), plans);
    everyPlaceIsFree();
  }
}
