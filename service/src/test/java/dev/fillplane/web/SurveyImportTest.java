package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.api.PartsApi;
import dev.fillplane.client.generated.model.Setup;
import dev.fillplane.client.generated.model.SurveyImport;
import dev.fillplane.client.generated.model.UnitSystem;
import dev.fillplane.web.json.Json;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Tables of text through the front door: what they become, and where they are wrong. */
class SurveyImportTest {

  private static final String PATH = SurveyImports.PATH;

  private static Response post(byte[] body, String units) {
    return RunningService.given()
        .contentType("text/csv; charset=utf-8")
        .body(body)
        .post(PATH + (units.isEmpty() ? "" : "?units=" + units));
  }

  private static JsonNode survey(String text, String units) {
    Response answer = post(text.getBytes(StandardCharsets.UTF_8), units);
    assertEquals(200, answer.statusCode(), answer.asString());
    return tree(answer.asString()).get("survey");
  }

  private static JsonNode tree(String json) {
    try {
      return Json.tree(json.getBytes(StandardCharsets.UTF_8));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<Double> readings(String text, String units) {
    List<Double> readings = new ArrayList<>();
    survey(text, units)
        .at("/setups/0/readings")
        .forEach(reading -> readings.add(reading.get("reading").doubleValue()));
    return readings;
  }

  /** Each error as {@code code pointer}. */
  private static List<String> errors(String text, String units) {
    Response answer = post(text.getBytes(StandardCharsets.UTF_8), units);
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals("application/problem+json", answer.contentType());
    List<Map<String, String>> errors = answer.path("errors");
    return errors.stream().map(error -> error.get("code") + " " + error.get("pointer")).toList();
  }

  private static void refused(String expected, String... lines) {
    assertEquals(expected, String.join(", ", errors(String.join("\n", lines), "")));
  }

  private static void refusedInInches(String expected, String... lines) {
    assertEquals(List.of(expected), errors(String.join("\n", lines), "us"));
  }

  // --- good tables

  @Test
  void semicolonsAndDecimalCommas() {
    JsonNode survey =
        survey(
            """
            setup;point;x;y;reading;benchmark
            A;mark;;;1250,0;0
            A;1;0,5;0,25;1262,5;
            B;1;0,5;0,25;1302;
            A;2;5,5;0,5;1259,0;
            """,
            "metric");
    assertEquals(List.of("A", "B"), survey.findValuesAsText("id"));
    assertEquals(
        tree("{'point':'1','x':0.5,'y':0.25,'reading':1262.5}".replace('\'', '"')),
        survey.at("/setups/0/readings/1"));
    assertEquals("[\"point\",\"reading\"]", names(survey.at("/setups/0/readings/0")));
    assertEquals(
        "[{\"point\":\"mark\",\"elevation\":0.0}]",
        survey.get("benchmarks").toString().replace(":0}", ":0.0}"));
  }

  private static String names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(name -> names.add('"' + name + '"'));
    return "[" + String.join(",", names) + "]";
  }

  @Test
  void inchesAsFractions() {
    String text =
        "point\tx\ty\treading\n"
            + "a\t1.5\t2\t2 3/8\n"
            + "b\t1\t2\t3/8\"\n"
            + "c\t1\t3\t2-3/8\"\n"
            + "d\t1\t4\t2.375\n"
            + "e\t1\t5\t2,375\"\n"
            + "f\t1\t6\t\"2 3/8\"\"\"\n"
            + "g\t1\t7\t-1/16\u2033\n"
            + "h\t1\t8\t47\"\n";
    assertEquals(
        List.of(2.375, 0.375, 2.375, 2.375, 2.375, 2.375, -0.0625, 47.0), readings(text, "us"));
    assertEquals(1.5, survey(text, "us").at("/setups/0/readings/0/x").doubleValue());
  }

  @Test
  void elevations() {
    JsonNode survey = survey("Elevation,Y,X,POINT\n-3.5,2,1,p\n4,2,3,q\n", "");
    assertEquals(
        tree("{'point':'p','x':1,'y':2,'elevation':-3.5}".replace('\'', '"')).toString(),
        survey.at("/elevations/0").toString().replace(".0", ""));
    assertTrue(survey.path("setups").isMissingNode());
  }

  @Test
  void marksBlankLinesAndLineEndsOfAnyKind() {
    String text = "\uFEFF\r\n point , reading \r\n\r\n\"a, \"\"b\"\"\",1200\n,\rc,1201,,\r";
    assertEquals(List.of(1200.0, 1201.0), readings(text, ""));
    assertEquals("a, \"b\"", survey(text, "").at("/setups/0/readings/0/point").textValue());
  }

  /** What comes back stands in a request as it is. */
  @Test
  void answerCanBePastedIntoARequest() {
    for (String units : List.of("metric", "us")) {
      ObjectNode request = (ObjectNode) tree("{}");
      request.put("units", units);
      request.set(
          "survey", survey("point,x,y,reading,benchmark\n1,0,0,50,9.25\n2,1,0,51,\n", units));
      Response answer = RunningService.post("/v1/elevations", request);
      assertEquals(200, answer.statusCode(), answer.asString());
      JsonNode points = tree(answer.asString()).at("/elevations/points");
      assertEquals(8.25, points.get(1).get("elevation").doubleValue(), 1e-9);
    }
  }

  @Test
  void readingsThatLookLikeMetresAreWarnedOf() {
    Response metres =
        post("point,reading\na,1.208\nb,1.212\n".getBytes(StandardCharsets.UTF_8), "");
    assertEquals(List.of("csv-readings-small"), metres.path("warnings.code"));
    Response millimetres = post("point,reading\na,12\n".getBytes(StandardCharsets.UTF_8), "");
    assertEquals(List.of(), millimetres.path("warnings.code"));
  }

  @Test
  void generatedClient() {
    FillplaneClient client = FillplaneClient.at(RunningService.uri()).build();
    PartsApi parts = client.api(PartsApi::new);
    SurveyImport answer =
        client.call(
            () -> parts.importSurvey("point,reading\n\u00e9,2 3/8\nb,2 1/2\n", UnitSystem.US));
    Setup setup = answer.getSurvey().getSetups().get(0);
    assertEquals("\u00e9", setup.getReadings().get(0).getPoint());
    assertEquals(2.5, setup.getReadings().get(1).getReading());
    ProblemException problem =
        assertThrows(
            ProblemException.class,
            () -> client.call(() -> parts.importSurvey("point,reading\na,up\n", null)));
    assertEquals("#/lines/2/reading", problem.errors().get(0).pointer());
  }

  // --- wrong tables

  @Test
  void nothingToRead() {
    refused("csv-empty #/lines", "");
    refused("csv-empty #/lines", "", " ", "");
    refused("csv-empty #/lines", "point,reading", "");
  }

  @Test
  void wrongHeaders() {
    refused("csv-column-missing #/lines/2", "", "x,y,reading", "1,2,3");
    refused("csv-column-missing #/lines/1", "point,x,reading", "a,1,3");
    refused("csv-column-missing #/lines/1", "point,y,elevation", "a,1,3");
    refused("csv-height-column #/lines/1", "point,x,y", "a,1,3");
    refused("csv-height-column #/lines/1", "point,x,y,reading,elevation", "a,1,3,1,2");
    refused("csv-column-unknown #/lines/1/colour", "point,colour,reading", "a,red,3");
    refused("csv-column-unknown #/lines/1/", "point,,reading", "a,red,3");
    refused("csv-column-repeated #/lines/1/reading", "point,reading,Reading", "a,3,3");
    refused("csv-column-of-readings #/lines/1/setup", "point,x,y,elevation,setup", "a,1,3,1,A");
    refused(
        "csv-column-of-readings #/lines/1/benchmark", "benchmark,point,x,y,elevation", "1,a,1,3,1");
  }

  @Test
  void rowsOfAnotherLength() {
    refused("csv-row-short #/lines/3", "point,x,y,reading", "a,1,2,1200", "b,1,2");
    refused("csv-row-long #/lines/2", "point,x,y,reading", "a,1,2,1200,5", "b,1,2,3");
  }

  @Test
  void cellsThatCannotBeRead() {
    refused("csv-cell-empty #/lines/2/reading", "point,reading", "a,", "b,1200");
    refused("csv-cell-empty #/lines/2/point", "point,reading", ",1200");
    refused("csv-cell-empty #/lines/3/setup", "point,setup,reading", "a,A,1200", "a,,1200");
    refused("csv-number #/lines/2/x", "point,x,y,reading", "a,one,2,1200");
    refused("csv-number #/lines/2/y", "point,x,y,reading", "a,1,NaN,1200");
    refused("csv-number #/lines/2/reading", "point,reading", "a,\"1,5\"");
    refused("csv-number #/lines/2/reading", "point;reading", "a;1.208,5");
    refused("csv-number #/lines/2/reading", "point;reading", "a;1e999");
    refused("csv-number #/lines/2/reading", "point;reading", "a;" + "9".repeat(400));
    refused("csv-number #/lines/2/benchmark", "point,reading,benchmark", "a,1200,ground");
    refused("csv-number #/lines/2/elevation", "point,x,y,elevation", "a,1,2,0x10");
    refused("csv-fraction #/lines/2/reading", "point,reading", "a,2 3/8");
    refused("csv-name #/lines/2/point", "point,reading", "n".repeat(81) + ",1200");
    refused(
        "csv-name #/lines/2/point, csv-number #/lines/4/reading",
        "point,reading",
        "\"a",
        "b\",1200",
        "c,up");
    refused("x-without-y #/lines/2/y", "point,x,y,reading", "a,1,,1200");
    refused("x-without-y #/lines/2/x", "point,x,y,reading", "a,,1,1200");
  }

  @Test
  void fractionsThatAreNone() {
    for (String text : List.of("1/0", "2 9/8", "2 3/8 1", "3/", "1 1", "2'", "\"\"\"\"")) {
      assertEquals(
          List.of("csv-number #/lines/2/reading"),
          errors("point,reading\na," + text + "\n", "us").stream()
              .map(error -> error.replace("csv-fraction", "csv-number"))
              .toList(),
          text);
    }
    refusedInInches("csv-number #/lines/2/reading", "point,reading", "a,3/0");
    assertEquals(
        List.of("csv-fraction #/lines/2/x"), errors("point,x,y,reading\na,1 1/2,1,4\n", "us"));
  }

  @Test
  void rowsThatContradictEachOther() {
    refused("csv-point-repeated #/lines/3/point", "point,x,y,elevation", "a,1,2,3", "a,2,2,3");
    refused(
        "point-in-two-places #/lines/3/x",
        "setup,point,x,y,reading",
        "A,a,1,2,1200",
        "B,a,1.5,2,1300");
    refused(
        "benchmark-repeated #/lines/3/benchmark",
        "setup,point,reading,benchmark",
        "A,a,1200,1",
        "B,a,1300,2");
    assertEquals(
        1,
        survey("setup,point,reading,benchmark\nA,a,1200,1\nB,a,1300,1\n", "")
            .get("benchmarks")
            .size());
  }

  @Test
  void quotesThatDoNotClose() {
    refused("csv-quote #/lines/3", "point,reading", "a,1200", "\"b,1201", "c,1202");
    refused("csv-quote #/lines/3", "point,reading", "a,1200", "\"b\"c,1201", "c,1202");
  }

  @Test
  void rowsWithoutEnd() {
    String header = "point,reading\na,12\n";
    refused("csv-row-endless #/lines/3", header + "b,12" + ",c".repeat(200_000));
    refused("csv-row-endless #/lines/3", header + "\"" + "c\n".repeat(200_000));
    refused("csv-row-endless #/lines/1", "c,".repeat(200_000));
    refused("csv-row-endless #/lines/1", "c".repeat(200_000));
    refused("csv-too-many #/lines/250004", header + "\n".repeat(300_000));
    refused("csv-row-short #/lines/9002", header + "\n".repeat(8_999) + "b\n");
  }

  @Test
  void longNamesOfColumnsAreToldInShort() {
    Response answer = post("c".repeat(90_000).getBytes(StandardCharsets.UTF_8), "");
    assertEquals(422, answer.statusCode());
    assertEquals("csv-column-unknown", answer.path("errors[0].code"));
    assertTrue(answer.asString().length() < 2_000, "short");
  }

  @Test
  void manyUnknownColumns() {
    Response answer = post("c,".repeat(40_000).getBytes(StandardCharsets.UTF_8), "");
    assertEquals(100, answer.<List<Object>>path("errors").size());
    assertTrue((Integer) answer.path("more") < 1_000, "reading stopped");
  }

  @Test
  void otherEncodings() {
    byte[] latin = "point,reading\nok,12\n\u00e9,13\n".getBytes(StandardCharsets.ISO_8859_1);
    Response answer = post(latin, "");
    assertEquals(422, answer.statusCode());
    assertEquals(List.of("csv-encoding"), answer.path("errors.code"));
    assertEquals(List.of("#/lines/3"), answer.path("errors.pointer"));
  }

  @Test
  void everyErrorAtOnceAndTheFirstHundredShown() {
    refused(
        "csv-number #/lines/2/x, csv-number #/lines/2/reading, csv-row-short #/lines/3,"
            + " csv-cell-empty #/lines/5/point",
        "point,x,y,reading",
        "a,x,1,r",
        "b",
        "",
        ",1,1,1");
    Response answer =
        post(("point,reading\n" + "a,b\n".repeat(130)).getBytes(StandardCharsets.UTF_8), "");
    assertEquals(100, answer.<List<Object>>path("errors").size());
    assertEquals(30, (Integer) answer.path("more"));
  }

  @Test
  void tooMany() {
    refused("csv-too-many #/lines/250002", "point,reading", "a,12\n".repeat(250_001));
    StringBuilder setups = new StringBuilder("setup,point,reading\n");
    for (int i = 0; i <= 300; i++) {
      setups.append(i).append(",a,12\n");
    }
    refused("csv-too-many #/lines/302/setup", setups.toString());
    StringBuilder benchmarks = new StringBuilder("point,reading,benchmark\n");
    for (int i = 0; i <= 10_000; i++) {
      benchmarks.append(i).append(",12,0\n");
    }
    refused("csv-too-many #/lines/10002/benchmark", benchmarks.toString());
  }

  // --- wrong calls

  @Test
  void otherMediaTypes() {
    for (String type :
        List.of(
            "application/json",
            "text/plain",
            "text/csv; charset=iso-8859-1",
            "text/csv; charset=utf-8x")) {
      Response answer =
          RunningService.given()
              .contentType(type)
              .body("point,reading\na,12\n".getBytes(StandardCharsets.UTF_8))
              .post(PATH);
      assertEquals(415, answer.statusCode(), type);
    }
    Response utf =
        RunningService.given()
            .contentType("text/CSV; header=present; charset=\"UTF-8\"")
            .body("point,reading\na,12\n".getBytes(StandardCharsets.UTF_8))
            .post(PATH);
    assertEquals(200, utf.statusCode());
  }

  @Test
  void otherParameters() {
    byte[] good = "point,reading\na,12\n".getBytes(StandardCharsets.UTF_8);
    assertEquals(400, post(good, "imperial").statusCode());
    assertEquals(400, post(good, "us&colour=blue").statusCode());
    assertEquals(405, RunningService.given().get(PATH).statusCode());
  }

  @Test
  void textOverTheLimit() {
    try (Server small = Server.start(Settings.at("127.0.0.1", 0).withBodyBytes(100))) {
      Response answer =
          RunningService.to(small)
              .contentType("text/csv; charset=utf-8")
              .body(("point,reading\n" + "a,12\n".repeat(50)).getBytes(StandardCharsets.UTF_8))
              .post(PATH);
      assertEquals(413, answer.statusCode());
    }
  }

  @Test
  void capabilitiesListIt() {
    List<String> operations = RunningService.given().get("/v1/capabilities").path("operations");
    assertTrue(operations.contains("importSurvey"), operations.toString());
  }
}
