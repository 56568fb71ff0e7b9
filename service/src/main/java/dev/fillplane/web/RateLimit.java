package dev.fillplane.web;

import io.javalin.config.JavalinConfig;
import io.javalin.plugin.bundled.RateLimitPlugin;
import java.util.concurrent.TimeUnit;

/** How many requests one address may make. */
final class RateLimit {

  private RateLimit() {}

  /**
   * Refuses more than {@code perMinute} calculations of one address in a minute; 0 refuses none.
   */
  static void handle(JavalinConfig config, int perMinute) {
    if (perMinute <= 0) {
      return;
    }
    config.registerPlugin(new RateLimitPlugin());
    config.routes.before(
        "/v1/*",
        context ->
            context.with(RateLimitPlugin.class).requestPerTimeUnit(perMinute, TimeUnit.MINUTES));
  }
}
