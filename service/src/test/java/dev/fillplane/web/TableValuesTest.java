package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.POJONode;
import dev.fillplane.web.json.TableValues;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Numbers of a table that come without nodes are checked as those that have them. */
class TableValuesTest {

  private static final SchemaGate GATE =
      new SchemaGate(RunningService.CONTRACT, List.of("ElevationsRequest"));
  private static final ObjectMapper PLAIN = new ObjectMapper();
  private static final List<String> ODD =
      List.of("null", "true", "\"1\"", "{}", "{\"x\":1e999}", "[1,[1e999,2]]", "1e999", "-0", "7");

  @Test
  void faultsAreThoseOfTheTree() throws JsonProcessingException {
    int faults = 0;
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      int count = List.of(0, 1, 3, 6, 999, 1_000, 1_001, 2_500).get(seed % 8);
      List<String> values =
          random.doubles(count).mapToObj(String::valueOf).collect(Collectors.toList());
      for (int i = random.nextInt(7); count > 0 && i > 0; i--) {
        values.set(random.nextInt(count), ODD.get(random.nextInt(ODD.size())));
        values.set(random.nextInt(Math.min(8, count)), ODD.get(random.nextInt(ODD.size())));
      }
      String body = body("[\"x\",\"y\",\"reading\"]", String.join(",", values));
      assertInstanceOf(POJONode.class, Body.parse(bytes(body)).at("/survey/table/values"));
      assertEquals(faults(PLAIN.readTree(body)), faults(Body.parse(bytes(body))));
      faults += faults(Body.parse(bytes(body))).size();
    }
    assertEquals(true, faults > 100, "only " + faults);
  }

  private static List<String> faults(JsonNode body) {
    return GATE.faults("ElevationsRequest", body).stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .sorted()
        .toList();
  }

  @Test
  void tooManyNumbersAreCounted() {
    int limit =
        RunningService.CONTRACT.schema("Table").at("/properties/values/maxItems").intValue();
    assertEquals(limit, TableValues.MOST);
    String values = "1,".repeat(limit) + "1";
    JsonNode body = Body.parse(bytes(body("[\"x\",\"y\",\"reading\"]", values)));
    assertEquals("[too-many #/survey/table/values]", faults(body).toString());
  }

  @Test
  void onlyTheFirstFaultsAreKept() {
    JsonNode body =
        Body.parse(bytes(body("[\"x\",\"y\",\"reading\"]", "0" + ",null".repeat(1_500))));
    assertEquals(TableValues.ODD_KEPT, faults(body).size());
  }

  @Test
  void onlyTheTableOfTheSurveyIsTakenOut() {
    for (String other :
        List.of(
            "{\"table\":{\"values\":[1]}}",
            "{\"survey\":[{\"table\":{\"values\":[1]}}]}",
            "{\"a\":{\"survey\":{\"table\":{\"values\":[1]}}}}",
            "{\"survey\":{\"table\":{\"columns\":[1]}}}",
            "{\"survey\":{\"table\":{\"x\":{\"values\":[1]}}}}",
            "[{\"survey\":{\"table\":{\"values\":[1]}}}]")) {
      assertEquals(other, Body.parse(bytes(other)).toString());
    }
  }

  @Test
  void whatIsNoJsonIsRefused() {
    for (String values : List.of("1,,2", "1 2", "NaN", "01", "{\"x\":1,\"x\":2}", "1],[2")) {
      byte[] body = bytes(body("[]", values));
      assertThrows(Refusal.class, () -> Body.parse(body), values);
    }
    assertThrows(Refusal.class, () -> Body.parse(bytes("{\"survey\":{\"table\":{\"values\":[1,")));
  }

  @Test
  void digestIsThatOfTheNumbersWhereverTheyStand() {
    String one =
        digest("{\"survey\":{\"table\":{\"columns\":[\"x\"],\"values\":[1,0,3.5]}},\"a\":1}");
    String other =
        digest(
            "{\"a\":1,\"survey\":{\"table\":{\"values\":[1.0,-0.0,35e-1],\"columns\":[\"x\"]}}}");
    assertEquals(one, other);
    for (String changed : List.of("1,0,3.6", "0,1,3.5", "1,0,3.5,0", "1,0")) {
      assertNotEquals(
          one,
          digest(
              "{\"survey\":{\"table\":{\"columns\":[\"x\"],\"values\":["
                  + changed
                  + "]}},\"a\":1}"),
          changed);
    }
    assertNotEquals(
        digest(body("[]", "1,".repeat(9_000) + "2")), digest(body("[]", "1,".repeat(9_000) + "3")));
  }

  private static String digest(String body) {
    return Body.digest(Body.parse(bytes(body)));
  }

  private static String body(String columns, String values) {
    return "{\"units\":\"metric\",\"survey\":{\"table\":{\"columns\":"
        + columns
        + ",\"values\":["
        + values
        + "]}}}";
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
