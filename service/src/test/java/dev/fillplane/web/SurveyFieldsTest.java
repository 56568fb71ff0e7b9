package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.generated.api.PartsApi;
import dev.fillplane.client.generated.model.ElevationsAnswer;
import dev.fillplane.client.generated.model.ElevationsRequest;
import dev.fillplane.client.generated.model.Reading;
import dev.fillplane.client.generated.model.Setup;
import dev.fillplane.client.generated.model.Survey;
import dev.fillplane.client.generated.model.UnitSystem;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Tilts, loops and ties through the front door. */
class SurveyFieldsTest {

  private static final String PATH = "/v1/elevations";

  private static Response post(Consumer<ObjectNode> change) {
    ObjectNode request = RunningService.example("elevations.json");
    change.accept((ObjectNode) request.get("survey"));
    return RunningService.post(PATH, request);
  }

  private static ObjectNode setup(ObjectNode survey, int index) {
    return (ObjectNode) survey.at("/setups/" + index);
  }

  private static void refused(String code, String pointer, Consumer<ObjectNode> change) {
    Response answer = post(change);
    assertEquals(422, answer.statusCode(), answer.asString());
    List<Map<String, String>> errors = answer.path("errors");
    assertEquals(
        List.of(code + " " + pointer),
        errors.stream().map(error -> error.get("code") + " " + error.get("pointer")).toList());
  }

  @Test
  void loopsTiesAndTilts() {
    Response answer = post(survey -> setup(survey, 0).put("x", 0.5).put("y", 1.0));
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(List.of(List.of("A", "B")), answer.path("elevations.loops.setups"));
    assertEquals(
        answer.<Object>path("elevations.misclosure.value"),
        answer.<Object>path("elevations.loops[0].value"));
    assertEquals("A", answer.path("elevations.ties[0].from"));
    assertEquals("B", answer.path("elevations.ties[0].to"));
    assertEquals(2, (Integer) answer.path("elevations.ties[0].points"));
    assertEquals(0.5, answer.<Number>path("elevations.setups[0].x").doubleValue());
    assertEquals(7.5, answer.<Number>path("elevations.setups[1].x").doubleValue(), 1e-9);
    double deviation = answer.<Number>path("elevations.setups[1].tiltDeviation").doubleValue();
    assertEquals(0.1, deviation, 1e-6);
    Response level = post(survey -> survey.put("laserTilt", 0));
    assertFalse(level.<Map<String, Object>>path("elevations.setups[0]").containsKey("tiltX"));
  }

  /** Ten kilometres are in, a millimetre more is out; of each list the first is told. */
  @Test
  void heightsThatAreNoneOfABuilding() {
    refused(
        "out-of-range",
        "#/survey/setups/1/readings/2/reading",
        survey -> {
          reading(survey, 1, 1).put("reading", 1e7);
          reading(survey, 1, 2).put("reading", 1e7 + 1);
          reading(survey, 1, 3).put("reading", 1e15);
        });
    refused(
        "out-of-range",
        "#/survey/benchmarks/0/elevation",
        survey -> ((ObjectNode) survey.at("/benchmarks/0")).put("elevation", -1e7 - 1));
    for (String column : List.of("reading", "elevation")) {
      refused(
          "out-of-range",
          "#/survey/table/values/5",
          survey -> {
            survey.removeAll();
            String table = "{'columns':['x','y','%s'],'values':[0,0,0,9,9,1e9,0,1,1e9]}";
            survey.set("table", Trees.of(table.formatted(column)));
          });
    }
  }

  private static ObjectNode reading(ObjectNode survey, int setup, int index) {
    return (ObjectNode) setup(survey, setup).at("/readings/" + index);
  }

  @Test
  void oneSetupIsAskedForATwoWayCheck() {
    Response answer =
        post(
            survey -> {
              survey.withArray("setups").remove(1);
              survey.put("laserTilt", 0.3);
            });
    List<String> codes = answer.path("warnings.code");
    assertEquals(List.of("tilt-unseen"), codes);
  }

  @Test
  void wrongTilt() {
    refused("too-small", "#/survey/laserTilt", survey -> survey.put("laserTilt", -0.1));
    refused("out-of-range", "#/survey/laserTilt", survey -> survey.put("laserTilt", 5.1));
    refused("wrong-type", "#/survey/laserTilt", survey -> survey.put("laserTilt", "level"));
    refused("wrong-type", "#/survey/laserTilt", survey -> survey.putNull("laserTilt"));
  }

  @Test
  void tiltOfAPlanHasTheSameRange() {
    ObjectNode sample = RunningService.sample();
    ((ObjectNode) sample.get("survey")).put("laserTilt", 5.1);
    Response answer = RunningService.post("/v1/plans", sample);
    assertEquals(422, answer.statusCode());
    assertEquals(List.of("#/survey/laserTilt"), answer.path("errors.pointer"));
  }

  @Test
  void wrongPlacesOfLasers() {
    refused("setup-x-without-y", "#/survey/setups/1/x", survey -> setup(survey, 1).put("x", 1));
    refused("setup-x-without-y", "#/survey/setups/1/y", survey -> setup(survey, 1).put("y", 1));
    refused(
        "wrong-type", "#/survey/setups/0/x", survey -> setup(survey, 0).put("x", "1").put("y", 1));
    refused(
        "laser-too-far",
        "#/survey/setups/0/x",
        survey -> setup(survey, 0).put("x", 900).put("y", 0));
  }

  @Test
  void placeTooLargeForANumber() {
    ObjectNode request = RunningService.example("elevations.json");
    setup((ObjectNode) request.get("survey"), 0).put("x", 777.25).put("y", 1);
    Response answer = RunningService.post(PATH, request.toString().replace("777.25", "1e999"));
    assertEquals(List.of("number-too-large"), answer.path("errors.code"));
    assertEquals(List.of("#/survey/setups/0/x"), answer.path("errors.pointer"));
  }

  @Test
  void openTie() {
    Response answer =
        post(
            survey -> {
              survey.put("readingError", 0.2).put("misclosureLimit", 50);
              survey.withArray("benchmarks").addObject().put("point", "5").put("elevation", 0);
            });
    List<String> codes = answer.path("warnings.code");
    assertTrue(codes.contains("tie-open"), answer.asString());
  }

  @Test
  void generatedClient() {
    Setup one = new Setup().id("A").x(2.0).y(2.0).addReadingsItem(reading("P", 0, 50));
    one.addReadingsItem(reading("Q", 30, 51));
    Setup two = new Setup().id("B").addReadingsItem(reading("P", 0, 48));
    two.addReadingsItem(reading("Q", 30, 49.1));
    Survey survey = new Survey().laserTilt(0.002).addSetupsItem(one).addSetupsItem(two);
    PartsApi parts = FillplaneClient.at(RunningService.uri()).build().api(PartsApi::new);
    ElevationsRequest request = new ElevationsRequest().units(UnitSystem.US).survey(survey);
    ElevationsAnswer answer =
        FillplaneClient.at(RunningService.uri())
            .build()
            .call(() -> parts.adjustElevations(request));
    assertEquals(1, answer.getElevations().getLoops().size());
    assertEquals(2, answer.getElevations().getTies().get(0).getPoints());
    double first = answer.getElevations().getSetups().get(0).getTiltX();
    double second = answer.getElevations().getSetups().get(1).getTiltX();
    // One inch in ten reads larger over 30 ft from the second: its plane rises toward Q.
    assertTrue(second > 0 && first < 0, first + " " + second);
    assertEquals(-first, second, 1e-9);
  }

  private static Reading reading(String point, double x, double told) {
    return new Reading().point(point).x(x).y(0.0).reading(told);
  }
}
