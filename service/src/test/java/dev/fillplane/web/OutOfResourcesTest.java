package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.javalin.Javalin;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;

/** An error of the virtual machine leaves the service as a problem document, too. */
class OutOfResourcesTest {

  @Test
  void leavesAsAProblem() {
    Javalin server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              Problems.handle(config);
              RequestIds.handle(config);
              config.routes.get(
                  "/",
                  context -> {
                    throw new OutOfMemoryError("a test");
                  });
            });
    try {
      server.start("127.0.0.1", 0);
      Response answer =
          RestAssured.given()
              .header("X-Request-Id", "big-one")
              .get("http://127.0.0.1:" + server.port() + "/");
      assertEquals(500, answer.statusCode());
      assertEquals("application/problem+json", answer.contentType());
      assertEquals("urn:fillplane:problem:failed", answer.path("type"));
      assertEquals("big-one", answer.path("requestId"));
    } finally {
      server.stop();
    }
  }
}
