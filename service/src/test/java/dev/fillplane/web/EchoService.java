package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.supply.BagCount;
import dev.fillplane.supply.BagCountRequest;
import dev.fillplane.supply.BagCounter;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;

/**
 * The service with two operations more, behind the same guards as its own, which show what an
 * operation costs before anything is checked and computed. Both bind the body of a bag count to its
 * record; {@code /v1/echoes} writes that record back, {@code /v1/known-answers} an answer that was
 * computed before.
 */
public final class EchoService {

  private EchoService() {}

  /** Takes the port; tells where it listens. */
  public static void main(String[] args) {
    Server server =
        Server.start(Settings.at("127.0.0.1", Integer.parseInt(args[0])), EchoService::add);
    System.out.println("Listening on http://127.0.0.1:" + server.port());
  }

  private static void add(JavalinConfig config) {
    byte[] body = Json.canonical(Contract.load().example("bag-count.json"));
    BagCount known = BagCounter.count(read(Body.parse(body)));
    config.routes.post(
        "/v1/echoes",
        context -> {
          BagCountRequest request = read(Body.parse(Body.bytes(context)));
          answer(context, Json.bytes(request, UnitSystem.METRIC));
        });
    config.routes.post(
        "/v1/known-answers",
        context -> {
          read(Body.parse(Body.bytes(context)));
          Answer answer = Answer.of(UnitSystem.METRIC, known);
          answer(context, Json.bytes(answer, UnitSystem.METRIC));
        });
  }

  private static BagCountRequest read(JsonNode tree) {
    return Desk.read(tree, BagCountRequest.class, UnitSystem.METRIC);
  }

  private static void answer(Context context, byte[] bytes) {
    context.contentType(Calculation.JSON).result(bytes);
  }
}
