package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Flatness of measured lines and of surveys, and the tolerances, through the service. */
class FlatnessChecksTest {

  private static final String CHECKS = "/v1/flatness-checks";

  /** Line 0 of an ASTM E1155M-96 worksheet of a US national laboratory (published). */
  private static final String LINE_0 =
      "418.617,419.938,421.894,423.748,425.221,424.739,423.799,424.307,425.425,424.688,423.164,"
          + "422.758,420.472,416.738";

  /** Gap and F-numbers derived from it; the mid-ordinate of 3.95 mm is no gap. */
  @Test
  void publishedLine() {
    for (double edge : new double[] {1.8, 3.0}) {
      JsonPath answer = checked(line(LINE_0, 0.3, "'straightedge':" + edge + ",'gap':1.5"));
      assertEquals(1.5240, answer.getDouble("lines[0].gap"), 0.00005);
      assertEquals(1.5240, answer.getDouble("gap"), 0.00005);
      assertEquals(1.8, answer.getDouble("lines[0].at"), 1e-9);
      assertEquals(28.84, answer.getDouble("lines[0].ff"), 0.005);
      assertEquals(20.21, answer.getDouble("lines[0].fl"), 0.005);
      assertEquals(28.84, answer.getDouble("combined.ff"), 0.005);
      assertEquals("over", answer.getString("verdict"));
      assertEquals(1, answer.getList("gaps").size());
      assertEquals(1.2, answer.getDouble("gaps[0].from.along"), 1e-9);
      assertEquals(2.4, answer.getDouble("gaps[0].to.along"), 1e-9);
      assertEquals(1.8, answer.getDouble("gaps[0].at.along"), 1e-9);
      assertEquals(1.5, answer.getDouble("gaps[0].limit"), 1e-9);
    }
    JsonPath wider = checked(line(LINE_0, 0.3, "'straightedge':3,'gap':1.6"));
    assertEquals("within", wider.getString("verdict"));
    assertEquals(List.of(), wider.getList("gaps"));
  }

  /** DIN 18202 line 3: 0.6 m between contacts allow 3 mm, though 2 m would allow 6. */
  @Test
  void dinAllowsByTheDistanceOfTheContacts() {
    ObjectNode request = line("0,-4,0,0,0,0,0,0", 0.3, "'id':'din-18202-line-3'");
    request.put("straightedge", 2);
    JsonPath answer = checked(request);
    assertEquals("over", answer.getString("verdict"));
    assertEquals(3, answer.getDouble("gaps[0].limit"), 1e-9);
    assertEquals(6, answer.getDouble("limit.gap"), 1e-9);
    assertEquals(2, answer.getDouble("limit.straightedge"), 1e-9);
  }

  @Test
  void planeHasNoGap() {
    String plane = "0,1,2,3,4,5,6,7,8,9,10,11,12";
    JsonPath answer = checked(line(plane, 0.3, "'id':'bs-8204-sr1'"));
    assertEquals(0, answer.getDouble("gap"), 1e-9);
    assertEquals("within", answer.getString("verdict"));
    assertNull(answer.get("lines[0].at"));
    assertEquals(List.of("f-number-capped"), answer.getList("warnings.code"));
    ObjectNode survey = room((x, y) -> 0.05 * x - 0.02 * y);
    assertEquals(0, checked(survey).getDouble("gap"), 1e-6);
  }

  @Test
  void whereFNumbersDoNotApplyTheyAreLeftOut() {
    ObjectNode small = line(LINE_0, 0.3, "'id':'aci-117-flat'");
    small.put("area", 25);
    assertWithout(checked(small), "smaller than 320 ft2");
    ObjectNode deck = line(LINE_0, 0.3, "'id':'aci-117-flat'");
    deck.put("suspended", true);
    JsonPath answer = checked(deck);
    assertEquals(28.84, answer.getDouble("combined.ff"), 0.005);
    assertNull(answer.get("combined.fl"));
    assertWithout(checked(line(LINE_0, 0.25, "'id':'aci-117-flat'")), "every 12 in");
    assertWithout(checked(line("0,1,0,1,0", 0.3, "'id':'aci-117-flat'")), "shorter than");
  }

  @Test
  void floorBelowItsClass() {
    JsonPath answer = checked(line(LINE_0, 0.3, "'id':'aci-117-flat'"));
    assertEquals(List.of("below-f-numbers", "below-f-numbers"), answer.getList("warnings.code"));
    assertEquals("within", answer.getString("verdict"));
    JsonPath lower = checked(line(LINE_0, 0.3, "'id':'aci-117-conventional'"));
    assertEquals(List.of(), lower.getList("warnings.code"));
  }

  @Test
  void readingsTooFarApartLeaveItUnclear() {
    JsonPath answer = checked(line("0,-20,0", 2, "'id':'bs-8204-sr1'"));
    assertEquals("unclear", answer.getString("verdict"));
    assertTrue(answer.getList("warnings.code").contains("line-too-coarse"));
  }

  /** An eighth of an inch in front of a door is found and to be ground; common practice. */
  @Test
  void humpBeforeADoorIsGround() {
    ObjectNode request =
        room((x, y) -> 0.125 * Math.exp(-((x - 6) * (x - 6) + (y - 1) * (y - 1)) / 1.2));
    ((ObjectNode) request.get("survey")).put("readingError", 0.002);
    JsonPath answer = checked(request);
    assertEquals(1, answer.getList("grind").size());
    assertEquals(6, answer.getDouble("grind[0].x"), 0.4);
    assertEquals(1, answer.getDouble("grind[0].y"), 0.4);
    assertEquals(0.05, answer.getDouble("grind[0].height"), 0.02);
    assertTrue(answer.getDouble("grind[0].volume") > 0);
    assertEquals(List.of(), answer.getList("patch"));
  }

  /** A lip of an eighth of an inch along a wall is found and to be patched; common practice. */
  @Test
  void lipIsPatched() {
    ObjectNode request = room((x, y) -> x > 4 && x < 8 && y < 1.1 ? -0.125 : 0);
    request.set("material", Refusals.tree("{'id':'cement-standard-25'}"));
    JsonPath answer = checked(request);
    assertEquals(6, answer.getDouble("patch[0].x"), 2);
    assertTrue(answer.getDouble("patch[0].y") < 1.5);
    assertEquals(0.0625, answer.getDouble("patch[0].depth"), 0.03);
    assertTrue(answer.getInt("bags") >= 1);
    assertNull(checked(room((x, y) -> 0)).get("bags"));
  }

  @Test
  void gapsOfASurveyAreListedWorstFirst() {
    ObjectNode request = room((x, y) -> -0.5 * bump(x - 3, y - 3) - 0.8 * bump(x - 9, y - 7));
    JsonPath answer = checked(request);
    assertEquals("over", answer.getString("verdict"));
    List<Double> gaps = answer.getList("gaps.gap", Double.class);
    List<Double> limits = answer.getList("gaps.limit", Double.class);
    assertTrue(gaps.size() >= 2 && gaps.size() <= 100, "gaps " + gaps.size());
    List<Double> badness =
        IntStream.range(0, gaps.size()).mapToObj(i -> gaps.get(i) / limits.get(i)).toList();
    assertEquals(badness.stream().sorted(Collections.reverseOrder()).toList(), badness);
    assertTrue(badness.stream().allMatch(times -> times > 1));
    assertEquals(answer.getDouble("gap"), gaps.get(0), 1e-9);
    assertEquals(9, answer.getDouble("gaps[0].at.x"), 0.6);
    assertEquals(7, answer.getDouble("gaps[0].at.y"), 0.6);
  }

  @Test
  void refusesWhatMakesNoSense() {
    String limit = "'id':'bs-8204-sr1'";
    refused(line("0,1", 0.3, limit), "too-few", "#/lines/0/elevations");
    refused(line("0,1,0", 0, limit), "too-small", "#/lines/0/spacing");
    refused(line("0,1,0", -0.3, limit), "too-small", "#/lines/0/spacing");
    refused(line("0,1e9,0", 0.3, limit), "elevation-too-far", "#/lines/0/elevations/1");
    refused(line("0,1,0", 0.3, "'id':'bs-1'"), "unknown-tolerance", "#/limit/id");
    refused(line("0,1,0", 0.3, "'gap':3"), "limit-id-or-gap", "#/limit");
    refused(line("0,1,0", 0.3, limit + ",'gap':3"), "limit-id-or-gap", "#/limit");
    ObjectNode shortEdge = line("0,1,0", 0.3, limit);
    shortEdge.put("straightedge", 0.2);
    refused(shortEdge, "out-of-range", "#/straightedge");
    ObjectNode numbersOfSurvey = room((x, y) -> 0);
    numbersOfSurvey.putObject("limit").put("id", "aci-117-superflat");
    refused(numbersOfSurvey, "tolerance-without-gap", "#/limit/id");
    ObjectNode both = room((x, y) -> 0);
    both.set("lines", line("0,1,0", 0.3, limit).get("lines"));
    refused(both, "lines-or-survey", "#");
    refused(Trees.of("{'units':'us'}"), "lines-or-survey", "#");
    ObjectNode roomless = room((x, y) -> 0);
    roomless.remove("rooms");
    refused(roomless, "survey-without-rooms", "#");
  }

  @Test
  void tolerancesAreLookedUp() {
    assertEquals(6, tolerance("din-18202-line-3?span=2").getDouble("limit.gap"), 1e-9);
    assertEquals(8, tolerance("din-18202-line-3?span=3").getDouble("limit.gap"), 1e-9);
    assertEquals(
        8 / 25.4,
        tolerance("din-18202-line-3?span=9.84251968504&units=us").getDouble("limit.gap"),
        1e-9);
    assertEquals(3, tolerance("bs-8204-sr1").getDouble("limit.gap"), 1e-9);
    assertEquals(60, tolerance("aci-117-superflat").getDouble("fNumbers.ff"), 1e-9);
    assertEquals(2, tolerance("din-18202-line-3?span=0.1").getDouble("limit.gap"), 1e-9);
  }

  @Test
  void tolerancesRefuse() {
    Refusals.problem(get("din-18202-line-9?span=2"), 404, "not-found");
    for (String span : List.of("", "?span=0", "?span=-1", "?span=x", "?span=NaN", "?span=0.05")) {
      Refusals.problem(get("din-18202-line-3" + span), 400, "bad-request");
    }
    Refusals.problem(get("din-18202-line-3?span=2&units=imperial"), 400, "bad-request");
  }

  private static double bump(double x, double y) {
    return Math.exp(-(x * x + y * y) / 1.5);
  }

  private static ObjectNode line(String elevations, double spacing, String limit) {
    return Trees.of(
        "{'units':'metric','lines':[{'id':'0','spacing':"
            + spacing
            + ",'elevations':["
            + elevations
            + "]}],'limit':{"
            + limit
            + "}}");
  }

  /** A room of 12 by 10 ft read every 9 in, held against the limit of large tile. */
  private static ObjectNode room(DoubleBinaryOperator inches) {
    ObjectNode request =
        Trees.of(
            "{'units':'us','limit':{'id':'tile-large'},'rooms':[{'id':'room','outline':"
                + "{'type':'Polygon','coordinates':[[[0,0],[12,0],[12,10],[0,10],[0,0]]]}}],"
                + "'survey':{'table':{'columns':['x','y','elevation']},'readingError':0.01}}");
    ArrayNode values = ((ObjectNode) request.at("/survey/table")).putArray("values");
    for (double y = 0.5; y < 10; y += 0.75) {
      for (double x = 0.5; x < 12; x += 0.75) {
        values.add(x).add(y).add(inches.applyAsDouble(x, y));
      }
    }
    return request;
  }

  private static void assertWithout(JsonPath answer, String why) {
    assertNull(answer.get("combined"));
    assertNull(answer.get("lines[0].ff"));
    assertTrue(answer.getList("warnings.code").contains("f-numbers-do-not-apply"));
    assertTrue(answer.getString("warnings.detail").contains(why), answer.getString("warnings"));
  }

  private static JsonPath checked(ObjectNode request) {
    Response answer = RunningService.post(CHECKS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }

  private static void refused(ObjectNode request, String code, String pointer) {
    Response answer = RunningService.post(CHECKS, request);
    assertEquals(422, answer.statusCode(), answer.asString());
    List<Map<String, String>> errors = answer.path("errors");
    assertTrue(
        errors.stream()
            .anyMatch(e -> code.equals(e.get("code")) && pointer.equals(e.get("pointer"))),
        answer.asString());
  }

  private static Response get(String rest) {
    return RunningService.given().urlEncodingEnabled(false).get("/v1/tolerances/" + rest);
  }

  private static JsonPath tolerance(String rest) {
    Response answer = get(rest);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }
}
