package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.supply.BagCount;
import dev.fillplane.supply.BagCountRequest;
import dev.fillplane.supply.BagCounter;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import io.javalin.config.JavalinConfig;

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

  private static void add(JavalinConfig config, Intake intake) {
    byte[] body = Json.canonical(Contract.load().example("bag-count.json"));
    BagCount known = BagCounter.count(read(body));
    config.routes.post(
        "/v1/echoes",
        context ->
            intake.answerLight(
                context, Calculation.JSON, bytes -> Json.bytes(read(bytes), UnitSystem.METRIC)));
    config.routes.post(
        "/v1/known-answers",
        context ->
            intake.answerLight(context, Calculation.JSON, bytes -> known(read(bytes), known)));
  }

  private static BagCountRequest read(byte[] body) {
    return Desk.read(Body.parse(body), BagCountRequest.class, UnitSystem.METRIC);
  }

  /** The request has to be read, though nothing is made of it. */
  private static byte[] known(BagCountRequest request, BagCount answer) {
    if (!(request.area() > 0)) {
      throw new IllegalArgumentException("not the example");
    }
    return Json.bytes(Answer.of(UnitSystem.METRIC, answer), UnitSystem.METRIC);
  }
}
