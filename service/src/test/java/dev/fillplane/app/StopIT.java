package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.openapi.Contract;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The built jar is asked to end while it works. */
@Timeout(120)
class StopIT {

  @TempDir private Path folder;

  /** Long enough to be under way when the signal comes. */
  private static String work() {
    ObjectNode request = (ObjectNode) Contract.load().example("comparison.json").deepCopy();
    ArrayNode variations = request.putArray("variations");
    for (int i = 0; i < 20; i++) {
      ObjectNode variation = variations.addObject().put("name", "crew " + i);
      variation.putObject("patch").putObject("crew").put("people", 2 + i % 10);
    }
    return request.toString();
  }

  @Test
  void whatIsUnderWayIsAnswered() throws Exception {
    try (JarService service = JarService.on(folder.resolve("data"))) {
      assertEquals(200, service.get("/health/ready").statusCode());
      CompletableFuture<HttpResponse<String>> answer =
          service.postLater("/v1/comparisons", "application/json", work());
      service.terminate();
      while (service.get("/health/ready").statusCode() != 503) {
        LockSupport.parkNanos(10_000_000);
      }
      assertEquals(200, service.get("/health/live").statusCode());
      assertEquals(200, answer.get().statusCode(), answer.get().body());
      assertTrue(answer.get().body().contains("crew 19"));
      assertEquals(143, service.exitCode());
    }
  }
}
