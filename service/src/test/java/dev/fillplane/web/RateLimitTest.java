package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.Scope;
import io.github.bucket4j.TimeMeter;
import io.javalin.Javalin;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The countdown of requests, with a clock that is turned by hand. */
class RateLimitTest {

  private static final int USUAL = 3;

  private final AtomicLong nanos = new AtomicLong(5_000_000_000L);
  private Javalin server;

  @BeforeEach
  void start() {
    RateLimit limit = new RateLimit(USUAL, clock());
    server =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              Problems.handle(config);
              config.routes.get("/address/{it}", it -> limit.count(it, it.pathParam("it")));
              config.routes.get("/own", context -> limit.count(context, key(OptionalInt.of(1))));
              config.routes.get(
                  "/usual", context -> limit.count(context, key(OptionalInt.empty())));
            });
    server.start("127.0.0.1", 0);
  }

  @AfterEach
  void stop() {
    server.stop();
  }

  @Test
  void countsDownAndBeginsAnew() {
    assertEquals("\"requests\";q=3;w=60", get("/address/a").header("RateLimit-Policy"));
    pass(Duration.ofSeconds(20));
    assertEquals("\"requests\";r=1;t=40", get("/address/a").header("RateLimit"));
    pass(Duration.ofMillis(500));
    assertEquals("\"requests\";r=0;t=40", get("/address/a").header("RateLimit"));
    Response refused = get("/address/a");
    assertEquals(429, refused.statusCode());
    assertEquals("\"requests\";r=0;t=40", refused.header("RateLimit"));
    assertEquals("40", refused.header("Retry-After"));
    assertEquals("urn:fillplane:problem:too-many-requests", refused.path("type"));
    assertEquals(
        "3 requests a minute are granted; try again in 40 seconds.", refused.path("detail"));
    pass(Duration.ofMillis(39_499));
    assertEquals("1", get("/address/a").header("Retry-After"));
    pass(Duration.ofMillis(1));
    assertEquals("\"requests\";r=2;t=60", get("/address/a").header("RateLimit"));
  }

  @Test
  void callersAreCountedApart() {
    for (int i = 0; i < USUAL; i++) {
      get("/address/a");
    }
    assertEquals(429, get("/address/a").statusCode());
    assertEquals(200, get("/address/b").statusCode());
    assertEquals(200, get("/usual").statusCode());
  }

  @Test
  void keyMayHaveItsOwnNumber() {
    assertEquals("\"requests\";r=0;t=60", get("/own").header("RateLimit"));
    assertEquals(429, get("/own").statusCode());
    assertEquals("\"requests\";q=3;w=60", get("/usual").header("RateLimit-Policy"));
  }

  @Test
  void noNumberNoLimit() {
    RateLimit none = new RateLimit(0, clock());
    Javalin free =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.routes.get("/", context -> none.count(context, "a"));
            });
    free.start("127.0.0.1", 0);
    try {
      Response answer = RestAssured.get("http://127.0.0.1:" + free.port() + "/");
      assertEquals(200, answer.statusCode());
      assertNull(answer.header("RateLimit"));
    } finally {
      free.stop();
    }
  }

  private void pass(Duration time) {
    nanos.addAndGet(time.toNanos());
  }

  private Response get(String path) {
    return RestAssured.get("http://127.0.0.1:" + server.port() + path);
  }

  private static Key key(OptionalInt perMinute) {
    return new Key(
        "abcdefghijkl",
        "office",
        "0f".repeat(32),
        List.of(Scope.CALCULATE),
        null,
        List.of(),
        perMinute,
        Optional.empty());
  }

  private TimeMeter clock() {
    return new TimeMeter() {
      @Override
      public long currentTimeNanos() {
        return nanos.get();
      }

      @Override
      public boolean isWallClockBased() {
        return false;
      }
    };
  }
}
