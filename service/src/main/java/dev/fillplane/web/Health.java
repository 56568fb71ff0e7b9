package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import io.javalin.config.JavalinConfig;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** What machines around the service ask. */
final class Health {

  private final Kept yaml;
  private final BooleanSupplier ready;

  Health(Contract contract, BooleanSupplier ready) {
    this.yaml = new Kept("application/yaml", contract.yaml().getBytes(StandardCharsets.UTF_8));
    this.ready = ready;
  }

  /** A state in one word. */
  record State(String state) {}

  void handle(JavalinConfig config) {
    config.routes.before("/health/*", context -> context.header("Cache-Control", "no-store"));
    config.routes.get(
        "/health/live", context -> Reply.json(context, UnitSystem.METRIC, new State("up")));
    config.routes.get(
        "/health/ready",
        context -> {
          if (!ready.getAsBoolean()) {
            throw new Refusal(
                Problem.of(Problem.Kind.BUSY, "The service is starting or stopping."),
                Map.of("Retry-After", "1"));
          }
          Reply.json(context, UnitSystem.METRIC, new State("up"));
        });
    config.routes.get("/openapi.yaml", yaml::answer);
  }
}
