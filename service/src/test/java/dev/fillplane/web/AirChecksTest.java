package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air checks over HTTP: units, and what is refused. */
class AirChecksTest {

  private static final String GOOD =
      "{'units':'metric','air':20,'humidity':0.5,'surface':20,'airspeed':0}";

  @Test
  void answersInKilogramsAnHour() {
    Response answer = post(GOOD);
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(0.089, answer.jsonPath().getDouble("evaporation"), 5e-5);
    assertEquals(0.25, answer.jsonPath().getDouble("limit.caution"), 1e-9);
    assertEquals(0.5, answer.jsonPath().getDouble("limit.stop"), 1e-9);
    assertEquals("holds", answer.path("verdict"));
  }

  @ParameterizedTest
  @CsvSource({
    "humidity, 1.01, too-big",
    "humidity, 50, too-big",
    "humidity, -0.1, too-small",
    "airspeed, -1, too-small",
    "airspeed, 200, out-of-range",
    "air, 68000, out-of-range",
    "substrate, 81, out-of-range",
    "wind, 3, unknown-property"
  })
  void refuses(String name, double value, String code) {
    ObjectNode request = (ObjectNode) Refusals.tree(GOOD);
    refused(request.put(name, value), code, "#/" + name);
  }

  @Test
  void surfaceIsWanted() {
    ObjectNode request = (ObjectNode) Refusals.tree(GOOD);
    request.remove("surface");
    refused(request, "missing", "#/surface");
  }

  private static void refused(ObjectNode request, String code, String pointer) {
    Response answer = post(request.toString());
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(List.of(code), answer.path("errors.code"));
    assertEquals(List.of(pointer), answer.path("errors.pointer"));
  }

  private static Response post(String body) {
    return RunningService.post("/v1/air-checks", body.replace('\'', '"'));
  }
}
