package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** New readings after a pour: what to grind, what to patch, with which bags, and what is next. */
class AfterThePourTest {

  @Test
  void flatFloorIsReady() {
    JsonPath answer = checked(read((x, y) -> 0.02 * x));
    assertEquals("ready", answer.getString("next.action"));
    assertEquals("next-ready", answer.getString("next.why.code"));
    assertEquals(0, answer.getInt("next.bags"));
    assertTrue(answer.getBoolean("bagsSuffice"));
  }

  /** A lip of an eighth of an inch along a wall is patched; common practice, no source. */
  @Test
  void lipHasOutlineAndBags() {
    ObjectNode request = read((x, y) -> x > 5 && x < 7 && y < 1.4 ? -0.125 : 0);
    ((ObjectNode) request.get("limit")).put("gap", 0.1);
    JsonPath answer = checked(request);
    assertEquals("over", answer.getString("verdict"));
    assertEquals("patch", answer.getString("next.action"));
    assertEquals(1, answer.getList("patch").size());
    assertEquals("Polygon", answer.getString("patch[0].outline.type"));
    List<List<Number>> ring = answer.getList("patch[0].outline.coordinates[0]");
    assertEquals(ring.get(0), ring.get(ring.size() - 1));
    for (List<Number> position : ring) {
      assertTrue(position.get(0).doubleValue() > 3 && position.get(0).doubleValue() < 9);
      assertTrue(position.get(1).doubleValue() > -1e-6 && position.get(1).doubleValue() < 2.2);
    }
    assertEquals(1, answer.getInt("patch[0].bags"));
    assertEquals(1, answer.getInt("next.bags"));
    assertTrue(answer.getBoolean("bagsSuffice"));
    assertEquals(answer.getDouble("patch[0].volume"), answer.getDouble("next.volume"), 1e-9);
    request.put("bagsLeft", 0);
    assertFalse(checked(request).getBoolean("bagsSuffice"));
  }

  /** An eighth of an inch in front of a door is ground; common practice, no source. */
  @Test
  void humpHasOutlineAndMinutes() {
    ObjectNode request =
        read((x, y) -> 0.25 * Math.exp(-((x - 6) * (x - 6) + (y - 1) * (y - 1)) / 0.8));
    JsonPath answer = checked(request);
    assertEquals("over", answer.getString("verdict"));
    assertEquals("grind", answer.getString("next.action"));
    assertEquals("Polygon", answer.getString("grind[0].outline.type"));
    double area = answer.getDouble("grind[0].area");
    assertEquals(area * 0.09290304 / 8 * 60, answer.getDouble("next.minutes"), 1e-6);
    assertTrue(answer.getList("warnings.code").contains("grinding-makes-dust"));
    assertEquals(0, answer.getInt("next.bags"));
  }

  @Test
  void bigHollowsArePouredAgain() {
    ObjectNode request = read((x, y) -> -0.6 * Math.exp(-((x - 6) * (x - 6)) / 6));
    request.put("bagsLeft", 0);
    JsonPath answer = checked(request);
    assertEquals("second-pour", answer.getString("next.action"));
    assertEquals(120, answer.getDouble("next.area"), 1e-6);
    assertTrue(answer.getInt("next.bags") >= 2);
    assertFalse(answer.getBoolean("bagsSuffice"));
    request.put("poured", false);
    assertEquals("pour", checked(request).getString("next.action"));
    request.remove("material");
    JsonPath unknown = checked(request);
    assertNull(unknown.get("bagsSuffice"));
    assertNull(unknown.get("next.bags"));
    assertTrue(unknown.getList("warnings.code").contains("bags-left-not-used"));
  }

  /** A bowl that is 25 ft2 times its factor deep under 10 ft: just as deep as is allowed. */
  @Test
  void whatIsNotSureIsReadAgain() {
    JsonPath answer = checked(read((x, y) -> 0.005 * (x - 6) * (x - 6)));
    assertEquals("unclear", answer.getString("verdict"));
    assertEquals("read-more", answer.getString("next.action"));
    assertNull(answer.get("bagsSuffice"));
  }

  /** Large tile asks for 1/16 in in 24 in as well: readings 9 in apart see that, 18 in do not. */
  @Test
  void shortEdgeNeedsCloseReadings() {
    ObjectNode close = read((x, y) -> 0);
    close.remove("limit");
    close.put("covering", "tile-large");
    JsonPath seen = checked(close);
    assertEquals(List.of("within", "within"), seen.getList("checks.verdict"));
    fill(close, (x, y) -> 0, 1.5);
    JsonPath unseen = checked(close);
    assertEquals(List.of("within", "unclear"), unseen.getList("checks.verdict"));
    assertEquals("unclear", unseen.getString("verdict"));
    assertTrue(unseen.getList("warnings.code").contains("edge-too-short-to-see"));
  }

  /** A room of 12 by 10 ft after a pour, 1/8 in in 10 ft, one bag left. */
  private static ObjectNode read(DoubleBinaryOperator inches) {
    ObjectNode request =
        Trees.of(
            "{'units':'us','poured':true,'limit':{'straightedge':10,'gap':0.125},'bagsLeft':1,"
                + "'material':{'id':'cement-standard-25'},'rooms':[{'id':'room','outline':"
                + "{'type':'Polygon','coordinates':[[[0,0],[12,0],[12,10],[0,10],[0,0]]]}}],"
                + "'survey':{'table':{'columns':['x','y','elevation']},'readingError':0.002}}");
    fill(request, inches, 0.75);
    return request;
  }

  private static void fill(ObjectNode request, DoubleBinaryOperator inches, double spacing) {
    ArrayNode values = ((ObjectNode) request.at("/survey/table")).putArray("values");
    for (double y = 0.5; y < 10; y += spacing) {
      for (double x = 0.5; x < 12; x += spacing) {
        values.add(x).add(y).add(inches.applyAsDouble(x, y));
      }
    }
  }

  private static JsonPath checked(ObjectNode request) {
    Response answer = RunningService.post("/v1/flatness-checks", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }
}
