package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scans of a hall of 50 x 20 m, all invented, through the front door. */
class DenseSurveyTest {

  private static final String KRIGING = "\"surface\":{\"method\":\"kriging\"},";

  /** A ramp of 1 mm a metre and 2 mm a metre under a level target: mean depth 25 + 20 mm. */
  @Test
  void scanOf200000Points() {
    Response answer = post("", ramp(200_000, 3));
    assertEquals(200, answer.statusCode(), answer.asString());
    JsonPath told = answer.jsonPath();
    assertEquals("natural-neighbour", told.getString("surface.method"));
    assertEquals(List.of("natural-neighbours-chosen #/surface"), findings(told, "warnings"));
    assertEquals(List.of(), told.getList("elevations.points"));
    assertEquals(List.of(), told.getList("elevations.suspects"));
    assertEquals(0, told.getDouble("surface.crossValidation.rmse"), 1e-6);
    double minimum = told.getDouble("depth.minimum");
    double expected = 1_000 * (45 + minimum);
    assertEquals(expected, told.getDouble("depth.volume"), 1e-3 * expected);
    double low = told.getDouble("depth.volumeOdds.p10");
    double high = told.getDouble("depth.volumeOdds.p90");
    assertTrue(low < expected && expected < high, low + " " + high);
    assertTrue(high - low < 0.1 * expected, low + " " + high);
  }

  @ParameterizedTest
  @CsvSource({"2000, kriging, 0", "2001, natural-neighbour, 1"})
  void methodIsChosenByCount(int count, String method, int warnings) {
    Response answer = post("", ramp(count, 4));
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(method, answer.path("surface.method"));
    List<String> found = findings(answer.jsonPath(), "warnings");
    assertEquals(warnings, found.stream().filter(one -> one.startsWith("natural")).count());
  }

  @ParameterizedTest
  @CsvSource({"3", "9", "60"})
  void eachMethodIsTakenForFewReadings(int count) {
    for (String method : List.of("natural-neighbour", "triangles", "kriging")) {
      String wish = "\"surface\":{\"method\":\"" + method + "\"},";
      Response answer = post(wish, ramp(count, 8));
      assertEquals(200, answer.statusCode(), answer.asString());
      assertEquals(method, answer.path("surface.method"));
      double volume = answer.jsonPath().getDouble("depth.volume");
      double minimum = answer.jsonPath().getDouble("depth.minimum");
      assertEquals(1_000 * (45 + minimum), volume, 1e-3 * volume, method);
    }
  }

  @Test
  void krigingOfTooManyIsRefused() {
    Response answer = post(KRIGING, ramp(2_001, 5));
    assertEquals(422, answer.statusCode());
    assertEquals(
        List.of("too-many-to-krige #/surface/method"), findings(answer.jsonPath(), "errors"));
  }

  @Test
  void variogramIsLeftAside() {
    String wish =
        "\"surface\":{\"method\":\"triangles\",\"variogram\":"
            + "{\"shape\":\"spherical\",\"nugget\":1,\"sill\":4,\"range\":3}},";
    Response answer = post(wish, ramp(60, 5));
    assertEquals(200, answer.statusCode(), answer.asString());
    assertTrue(
        findings(answer.jsonPath(), "warnings").contains("variogram-not-used #/surface/variogram"));
  }

  @Test
  void faultsOfATableAreToldAtTheirNumbers() {
    double[][] rows = ramp(5_000, 6);
    String[] values = text(rows).split(",");
    values[12_001] = "null";
    values[14_999] = "1e999";
    values[2] = "\"7\"";
    Response answer = postValues("", String.join(",", values));
    assertEquals(422, answer.statusCode());
    assertEquals(
        List.of(
            "number-too-large #/survey/table/values/14999",
            "wrong-type #/survey/table/values/12001",
            "wrong-type #/survey/table/values/2"),
        findings(answer.jsonPath(), "errors").stream().sorted().toList());
  }

  @Test
  void incompleteRowIsToldAtTheTable() {
    Response answer = postValues("", text(ramp(5_000, 6)) + ",1");
    assertEquals(422, answer.statusCode());
    assertEquals(
        List.of("table-row-incomplete #/survey/table/values"),
        findings(answer.jsonPath(), "errors"));
  }

  @Test
  void readingsThatStandOutAreSuspects() {
    double[][] rows = ramp(20_000, 7);
    rows[1_233][2] += 12;
    rows[17_000][2] -= 30;
    Response answer = post("", rows);
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(List.of("17001", "1234"), answer.path("elevations.suspects.point"));
    double expected = rows[17_000][2] + 30;
    assertEquals(expected, answer.jsonPath().getDouble("elevations.suspects[0].expected"), 1e-6);
  }

  private static List<String> findings(JsonPath told, String list) {
    return told.<java.util.Map<String, Object>>getList(list).stream()
        .map(one -> one.get("code") + " " + one.get("pointer"))
        .toList();
  }

  private static double[][] ramp(int count, long seed) {
    Random random = new Random(seed);
    double[][] rows = new double[count][];
    for (int i = 0; i < count; i++) {
      double x = Math.round(5_000 * random.nextDouble()) / 100.0;
      double y = Math.round(2_000 * random.nextDouble()) / 100.0;
      rows[i] = new double[] {x, y, x + 2 * y};
    }
    return rows;
  }

  private static Response post(String wish, double[][] rows) {
    return postValues(wish, text(rows));
  }

  private static Response postValues(String wish, String values) {
    return RunningService.post(
        "/v1/depth-fields",
        "{\"units\":\"metric\","
            + wish
            + "\"rooms\":[{\"id\":\"hall\",\"outline\":{\"type\":\"Polygon\",\"coordinates\":"
            + "[[[0,0],[50,0],[50,20],[0,20],[0,0]]]}}],"
            + "\"material\":{\"id\":\"cement-standard-25\"},\"target\":{\"shape\":\"level\"},"
            + "\"survey\":{\"table\":{\"columns\":[\"x\",\"y\",\"elevation\"],\"values\":["
            + values
            + "]}}}");
  }

  private static String text(double[][] rows) {
    StringBuilder text = new StringBuilder();
    for (double[] row : rows) {
      text.append(String.format(Locale.ROOT, ",%.2f,%.2f,%.2f", row[0], row[1], row[2]));
    }
    return text.substring(1);
  }
}
