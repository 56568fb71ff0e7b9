package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Limits of several figures, of F-numbers alone, sections and reading errors of lines. */
class FlatnessFiguresTest {

  /** Line 0 of an ASTM E1155M-96 worksheet of a US national laboratory (published). */
  private static final String LINE_0 =
      "418.617,419.938,421.894,423.748,425.221,424.739,423.799,424.307,425.425,424.688,423.164,"
          + "422.758,420.472,416.738";

  private static final String MORE = ",0".repeat(80);

  private static final String WARNINGS = "warnings.code";

  /** FF 28.84 and FL 20.21 (derived): over for a very flat floor, and no gap is asked for. */
  @Test
  void fNumbersAlone() {
    JsonPath over = checked(lines("'limit':{'id':'aci-117-very-flat'}", line("0", LINE_0, "")));
    assertEquals("over", over.getString("verdict"));
    assertEquals("over", over.getString("fNumbers.verdict"));
    assertEquals(27, over.getDouble("fNumbers.asked.localFf"), 1e-9);
    assertNull(over.get("limit"));
    assertEquals(List.of(), over.getList("checks"));
    String flat =
        IntStream.range(0, 20)
            .mapToObj(i -> i % 2 == 0 ? "0" : "0.1")
            .collect(Collectors.joining(","));
    ObjectNode within = lines("'limit':{'id':'aci-117-superflat'}", line("0", flat, ""));
    assertEquals("within", checked(within).getString("verdict"));
    within.put("area", 100);
    JsonPath few = checked(within);
    assertTrue(few.getList(WARNINGS).contains("too-few-differences"), few.getString("warnings"));
    assertEquals("unclear", few.getString("verdict"));
    ObjectNode small = lines("'limit':{'id':'aci-117-superflat'}", line("0", flat, ""));
    small.put("area", 20);
    assertEquals("unclear", checked(small).getString("verdict"));
  }

  /** On a suspended deck FL is not asked for. */
  @Test
  void suspendedDecksAreHeldAgainstFf() {
    String sloping =
        IntStream.range(0, 20).mapToObj(i -> i * 5 + "").collect(Collectors.joining(","));
    ObjectNode request = lines("'limit':{'id':'aci-117-superflat'}", line("0", sloping, ""));
    assertEquals("over", checked(request).getString("verdict"));
    request.put("suspended", true);
    assertEquals("within", checked(request).getString("verdict"));
  }

  /** A step of 2 mm in 0.1 m: fits 1/4 in in 10 ft, not 1/16 in in 12 in (ANSI A108.02). */
  @Test
  void everyFigureOfTileIsChecked() {
    String dip = "0,0,0,-2,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0";
    ObjectNode request =
        lines("'limit':{'id':'tile-small'}", line("0", dip, "").replace("0.3,", "0.1,"));
    JsonPath answer = checked(request);
    assertEquals(List.of("within", "over"), answer.getList("checks.verdict"));
    assertEquals("over", answer.getString("verdict"));
    assertEquals(0.3048, answer.getDouble("gaps[0].straightedge"), 1e-9);
    assertEquals(1.5875, answer.getDouble("gaps[0].limit"), 1e-9);
  }

  /** Readings a foot apart cannot see a gap under an edge of a foot. */
  @Test
  void unseenFigureIsUnclear() {
    JsonPath answer =
        checked(lines("'limit':{'id':'tile-small'}", line("0", "0,0,0,0,0,0,0,0,0,0,0,0", "")));
    assertEquals(List.of("within", "unclear"), answer.getList("checks.verdict"));
    assertEquals("unclear", answer.getString("verdict"));
    assertTrue(answer.getList(WARNINGS).contains("line-too-coarse"));
  }

  /** 4 mm in a dip 2 m wide: over 1/8 in in 6 ft, within 3/16 in in 10 ft, and one will do. */
  @Test
  void oneFigureOfWoodWillDo() {
    String dip = "0,0,0,0,-2,-3,-4,-3,-2,0,0,0,0";
    JsonPath answer = checked(lines("'covering':'wood-glued'", line("0", dip, "")));
    assertEquals(List.of("within", "over"), answer.getList("checks.verdict"));
    assertEquals("within", answer.getString("verdict"));
    assertEquals(List.of(), answer.getList("gaps"));
    JsonPath tile = checked(lines("'covering':'tile-large'", line("0", dip, "")));
    assertEquals("over", tile.getString("verdict"));
    assertEquals(3.048, tile.getDouble("limit.straightedge"), 1e-9);
  }

  /** ACI 117: 3/8 in everywhere, and 1/4 in at 90 % of the places (from memory). */
  @Test
  void mostPlacesOfTheEdge() {
    String dip = "0,0,0,0,0,-8,0,0,0,0,0,0,0,0,0,0";
    JsonPath answer = checked(lines("'limit':{'id':'aci-117-flat'}", line("0", dip, "")));
    assertEquals(List.of("within", "over"), answer.getList("checks.verdict"));
    assertEquals(0.9, answer.getDouble("checks[1].share"), 1e-9);
    assertTrue(answer.getDouble("checks[1].met") < 0.9);
    assertEquals(1, answer.getDouble("checks[0].met"), 1e-9);
    JsonPath longer = checked(lines("'limit':{'id':'aci-117-flat'}", line("0", dip + MORE, "")));
    assertEquals("within", longer.getString("verdict"));
    assertEquals(List.of(), longer.getList("gaps"));
  }

  /** 1.524 mm (derived), known within 1.645 sqrt(1.5) times the reading error. */
  @Test
  void readingErrorOfALine() {
    assertEquals("over", verdict(1.5, "0"));
    assertEquals("within", verdict(1.6, "0"));
    assertEquals("unclear", verdict(1.5, "0.1"));
    assertEquals("unclear", verdict(1.6, "0.1"));
    assertEquals("over", verdict(1.3, "0.1"));
    assertEquals("within", verdict(1.8, "0.1"));
  }

  @Test
  void linesThatLieRightlyHaveNoWarning() {
    assertEquals(List.of(), checked(section("1,1", "10,1", "1,2.2", "10,2.2")).getList(WARNINGS));
  }

  @Test
  void rulesForThePlacesOfLines() {
    warned(section("1,0.5", "10,0.5", "1,2.2", "10,2.2"), "line-near-edge", "#/lines/0");
    warned(section("1,1", "10,1", "1,2.1", "10,2.1"), "lines-too-close", "#/lines/1");
    warned(section("1,1", "10,1", "31,1", "40,1"), "line-near-edge", "#/lines/1");
    ObjectNode narrow = section("1,1", "10,1", "1,1", "10,1");
    room(narrow, 40, 2);
    warned(narrow, "section-too-narrow", "#/rooms/0");
    ObjectNode large = section("1,1", "10,1", "1,2.2", "10,2.2");
    room(large, 20, 10);
    warned(large, "too-few-differences", "#/rooms/0");
    ObjectNode small = section("1,1", "10,1", "1,2.2", "10,2.2");
    room(small, 11, 2.6);
    warned(small, "f-numbers-do-not-apply", "#/rooms/0");
  }

  /** A line that lies wrongly tells nothing of its section. */
  @Test
  void verdictOfLinesThatLieWronglyIsUnclear() {
    ObjectNode right = section("1,1", "10,1", "1,2.2", "10,2.2");
    assertEquals("within", checked(right).getString("verdict"));
    ObjectNode wrong = section("1,0.5", "10,0.5", "1,2.2", "10,2.2");
    assertEquals("unclear", checked(wrong).getString("verdict"));
  }

  @Test
  void refusesWhatMakesNoSense() {
    ObjectNode half = lines("'covering':'carpet'", line("0", "0,1,0", ",'from':[0,0]"));
    refused(half, "line-half-placed", "#/lines/0");
    ObjectNode longer =
        lines("'covering':'carpet'", line("0", "0,1,0", ",'from':[0,0],'to':[3,0]"));
    refused(longer, "line-length-differs", "#/lines/0");
    String twice = "'covering':'carpet','limit':{'id':'bs-8204-sr1'}";
    refused(lines(twice, line("0", "0,1,0", "")), "limit-id-or-gap", "#/limit");
    ObjectNode error = lines("'covering':'carpet'", line("0", "0,1,0", ",'readingError':60"));
    refused(error, "out-of-range", "#/lines/0/readingError");
    ObjectNode negative = lines("'covering':'carpet'", line("0", "0,1,0", ""));
    negative.put("bagsLeft", -1);
    refused(negative, "too-small", "#/bagsLeft");
    ObjectNode unused = lines("'covering':'carpet'", line("0", "0,1,0", ""));
    unused.put("bagsLeft", 1);
    warned(unused, "bags-left-not-used", "#/bagsLeft");
  }

  /** Two lines of 9 m, wavy by 0.25 mm, in a room of 11 m by 3.2 m (379 ft2). */
  private static ObjectNode section(String... ends) {
    List<String> wave = List.of("0", "0.1", "0.25");
    String heights =
        IntStream.range(0, 31)
            .mapToObj(i -> wave.get(i % wave.size()))
            .collect(Collectors.joining(","));
    ObjectNode request =
        lines(
            "'limit':{'id':'aci-117-superflat'}",
            line("a", heights, ",'from':[" + ends[0] + "],'to':[" + ends[1] + "]")
                + ","
                + line("b", heights, ",'from':[" + ends[2] + "],'to':[" + ends[3] + "]"));
    room(request, 11, 3.2);
    return request;
  }

  private static void room(ObjectNode request, double width, double length) {
    String corners =
        String.format(Locale.ROOT, "[[[0,0],[%1$s,0],[%1$s,%2$s],[0,%2$s],[0,0]]]", width, length);
    request.set(
        "rooms",
        Trees.of(
                "{'rooms':[{'id':'hall','outline':{'type':'Polygon','coordinates':"
                    + corners
                    + "}}]}")
            .get("rooms"));
  }

  private static String verdict(double gap, String error) {
    String limit = "'limit':{'straightedge':3,'gap':" + gap + "}";
    return checked(lines(limit, line("0", LINE_0, ",'readingError':" + error)))
        .getString("verdict");
  }

  private static String line(String id, String elevations, String more) {
    return "{'id':'" + id + "','spacing':0.3,'elevations':[" + elevations + "]" + more + "}";
  }

  private static ObjectNode lines(String limit, String lines) {
    return Trees.of("{'units':'metric','lines':[" + lines + "]," + limit + "}");
  }

  private static JsonPath checked(ObjectNode request) {
    Response answer = RunningService.post("/v1/flatness-checks", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }

  private static void warned(ObjectNode request, String code, String pointer) {
    List<Map<String, String>> warnings = checked(request).getList("warnings");
    assertTrue(holds(warnings, code, pointer), warnings.toString());
  }

  private static void refused(ObjectNode request, String code, String pointer) {
    Response answer = RunningService.post("/v1/flatness-checks", request);
    assertEquals(422, answer.statusCode(), answer.asString());
    assertFalse(answer.<List<?>>path("errors").isEmpty());
    assertTrue(holds(answer.path("errors"), code, pointer), answer.asString());
  }

  private static boolean holds(List<Map<String, String>> findings, String code, String pointer) {
    return findings.stream()
        .anyMatch(f -> code.equals(f.get("code")) && pointer.equals(f.get("pointer")));
  }
}
