package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dust checks over HTTP: values of 29 CFR 1926.1153 table 1, grinders, seen in reprints; the rows
 * outdoors and up to 4 h from memory.
 */
class DustChecksTest {

  @ParameterizedTest
  @CsvSource({"4.5, 112.5", "5, 125", "7, 175"})
  void airOfAShroud(double wheel, double cfm) {
    Response answer = answered(grinder("'wheelDiameter':" + wheel + ",'hours':1,'indoors':true"));
    assertEquals(cfm, answer.jsonPath().getDouble("airflow"), 1e-9);
    assertEquals(0.99, answer.jsonPath().getDouble("filterEfficiency"), 1e-12);
    assertEquals(false, answer.path("assessment"));
  }

  /** 125 cfm are 212.4 m3/h. */
  @Test
  void airInMetres() {
    Response answer =
        answered(
            "{'units':'metric','task':'hand-grinding','wheelDiameter':127,'hours':1,'indoors':true}");
    assertEquals(212.376, answer.jsonPath().getDouble("airflow"), 1e-3);
  }

  @ParameterizedTest
  @CsvSource({"true, 4, ", "true, 4.1, 10", "true, 8, 10", "false, 8, ", "false, 1, "})
  void respiratorByHoursAndPlace(boolean indoors, double hours, Integer factor) {
    Response answer =
        answered(grinder("'wheelDiameter':5,'hours':" + hours + ",'indoors':" + indoors));
    assertEquals(factor, answer.path("respirator.apf"));
  }

  @Test
  void theStricterWhereNotTold() {
    Response answer = answered(grinder("'wheelDiameter':5"));
    assertEquals(10, (Integer) answer.path("respirator.apf"));
    assertEquals(
        Set.of("dust-hours-assumed", "dust-indoors-assumed"),
        new TreeSet<>(answer.<List<String>>path("warnings.code")));
  }

  @Test
  void walkBehindGrinderIndoorsAllDay() {
    Response answer = answered("{'units':'us','task':'floor-grinding','hours':8,'indoors':true}");
    assertNull(answer.path("respirator"));
    assertNull(answer.path("airflow"));
    assertEquals(0.99, answer.jsonPath().getDouble("filterEfficiency"), 1e-12);
    assertTrue(controls(answer).contains("dust-vacuum-between-passes"));
    assertEquals(List.of(), answer.path("warnings"));
  }

  @Test
  void walkBehindGrinderOutdoorsNeedsNoVacuum() {
    Response answer = answered("{'units':'us','task':'floor-grinding','indoors':false}");
    assertEquals(
        List.of("dust-collector-of-maker", "dust-filter-cleaning", "dust-keep-out"),
        controls(answer));
  }

  @Test
  void mixingIsAssessed() {
    Response answer = answered("{'units':'metric','task':'bag-mixing','indoors':true}");
    assertEquals(true, answer.path("assessment"));
    assertNull(answer.path("respirator"));
    assertEquals(
        List.of("dust-assessment", "dust-extraction-at-mixer", "dust-open-bags-gently"),
        controls(answer));
    assertEquals(
        "dust-upwind",
        controls(answered("{'units':'metric','task':'bag-mixing','indoors':false}")).get(1));
  }

  @Test
  void cleaning() {
    Response answer = answered("{'units':'metric','task':'clean-up'}");
    assertEquals(
        List.of("dust-no-dry-sweeping", "dust-no-compressed-air", "dust-vacuum-or-wet"),
        controls(answer));
    assertEquals(List.of(), answer.path("warnings"));
  }

  @ParameterizedTest
  @CsvSource({"us, 50 25 50 25", "eu, 100", "uk, 100", ", 50 25 50 25 100 100"})
  void limitsOfAPlace(String where, String limits) {
    String told = where == null ? "" : ",'jurisdiction':'" + where + "'";
    Response answer = answered("{'units':'metric','task':'clean-up'" + told + "}");
    List<Double> expected = List.of(limits.split(" ")).stream().map(Double::valueOf).toList();
    assertEquals(expected, answer.jsonPath().getList("limits.concentration", Double.class));
    assertEquals(
        where != null && !where.equals("us"),
        answer.<List<String>>path("warnings.code").contains("dust-controls-of-the-us"));
    assertEquals("ug/m3", answer.path("unitCodes.concentration"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'task':'hand-grinding' | wheel-wanted | #/wheelDiameter",
        "'task':'hand-grinding','wheelDiameter':125 | out-of-range | #/wheelDiameter",
        "'task':'hand-grinding','wheelDiameter':0 | too-small | #/wheelDiameter",
        "'task':'sawing' | not-one-of | #/task",
        "'task':'clean-up','hours':0 | too-small | #/hours",
        "'task':'clean-up','hours':25 | too-big | #/hours",
        "'task':'clean-up','indoors':'yes' | wrong-type | #/indoors",
        "'task':'clean-up','jurisdiction':'mars' | not-one-of | #/jurisdiction",
        "'task':'clean-up','wheel':5 | unknown-property | #/wheel",
        "'hours':5 | missing | #/task"
      })
  void refuses(String told, String code, String pointer) {
    Response answer = post("{'units':'us'," + told + "}");
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(List.of(code), answer.path("errors.code"));
    assertEquals(List.of(pointer), answer.path("errors.pointer"));
  }

  private static String grinder(String told) {
    return "{'units':'us','task':'hand-grinding'," + told + "}";
  }

  private static List<String> controls(Response answer) {
    return answer.path("controls.code");
  }

  private static Response answered(String body) {
    Response answer = post(body);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }

  private static Response post(String body) {
    return RunningService.post("/v1/dust-checks", body.replace('\'', '"'));
  }
}
