package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import io.javalin.Javalin;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;

/** A fault of the service itself says nothing of its inside. */
class ProblemsTest {

  @Test
  void faultOfTheService() {
    Javalin app =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              Problems.handle(config);
              RequestIds.handle(config);
              config.routes.get(
                  "/fault",
                  context -> {
                    throw new IllegalStateException("a secret of dev.fillplane");
                  });
            });
    app.start("127.0.0.1", 0);
    try {
      Response answer =
          RestAssured.given()
              .header("X-Request-Id", "mine-1")
              .get("http://127.0.0.1:" + app.port() + "/fault");
      assertEquals(500, answer.statusCode());
      assertEquals("application/problem+json", answer.contentType());
      assertEquals("urn:fillplane:problem:failed", answer.path("type"));
      assertEquals("mine-1", answer.path("requestId"));
      assertFalse(answer.asString().contains("secret"), answer.asString());
    } finally {
      app.stop();
    }
  }
}
