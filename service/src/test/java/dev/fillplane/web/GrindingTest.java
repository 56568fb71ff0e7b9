package dev.fillplane.web;

import static dev.fillplane.web.Surveyed.plan;
import static dev.fillplane.web.Surveyed.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What grinding costs and saves, through the front door. */
class GrindingTest {

  private static final String PRICES = "'prices':{'currency':'EUR','fill':'2.00','grind':'4.00'}";

  /** 60 m2 at 0 with a hump of 6 mm in the middle that is gone 0.9 m away from its top. */
  private static ObjectNode hump(String target) {
    ObjectNode request =
        room(
            "metric",
            10,
            6,
            0.5,
            (x, y) -> 6 * Math.max(0, 1 - Math.pow(Math.hypot(x - 5.25, y - 3.25) / 0.9, 2)));
    request.withObject("survey").put("readingError", 0.2);
    request.set("target", Refusals.tree(target));
    request.put("covering", "wood-glued");
    return request;
  }

  /** Lowering 60 m2 by 3 mm saves 180 L of fill: 12 bags of 15 L and their waste. */
  @Test
  void aHumpOfHalfASquareMetreCostsADozenBags() {
    JsonPath answer = plan("/v1/plans", hump("{" + PRICES + "}"));
    assertEquals(0, answer.getDouble("grinding.area"));
    List<Number> heights = answer.getList("grinding.savings.height");
    int three = heights.stream().map(Number::doubleValue).toList().indexOf(3.0);
    String saving = "grinding.savings[" + three + "].";
    assertTrue(answer.getInt(saving + "bags") >= 11, answer.getString(saving + "bags"));
    assertTrue(answer.getInt(saving + "bags") <= 13, answer.getString(saving + "bags"));
    assertEquals(1, answer.getList(saving + "areas").size());
    assertTrue(answer.getDouble(saving + "area") < 3, answer.getString(saving + "area"));
    assertEquals(3, answer.getDouble(saving + "areas[0].height"), 0.05);
    assertEquals(5.25, answer.getDouble(saving + "areas[0].x"), 0.15);
    double ground = answer.getDouble(saving + "volume");
    double saved = 2 * (180 - ground) - 4 * ground;
    assertEquals(saved, Double.parseDouble(answer.getString(saving + "saves.amount")), 0.011);
    assertEquals("EUR", answer.getString(saving + "saves.currency"));
    assertEquals(
        answer.getDouble(saving + "area") / 8 * 60, answer.getDouble(saving + "minutes"), 1e-6);
  }

  /** Among readings of 1 mm the floor between them hardly rises; the reading itself is listed. */
  @Test
  void aLoneHighReadingIsListedToBeGround() {
    ObjectNode request =
        room("metric", 10, 6, 0.5, (x, y) -> Math.hypot(x - 5.25, y - 3.25) < 0.1 ? 6 : 0);
    JsonPath answer = plan("/v1/plans", request);
    assertTrue(answer.getList("grinding.savings").size() > 2);
    assertEquals(5.25, answer.getDouble("grinding.savings[2].areas[0].x"), 1e-9);
    assertEquals(3, answer.getDouble("grinding.savings[2].areas[0].height"), 1e-6);
    assertTrue(answer.getDouble("grinding.savings[2].area") > 0.1);
  }

  @Test
  void withoutPricesNoCostIsTold() {
    JsonPath answer = plan("/v1/plans", hump("{}"));
    assertFalse(answer.getList("grinding.savings").isEmpty());
    assertNull(answer.get("grinding.savings[0].saves"));
    assertNull(answer.get("options[3].cost"));
    assertNull(answer.get("grinding.cost"));
  }

  @Test
  void whatIsAllowedIsGround() {
    String target = "{'grind':{'allowed':true,'maximumDepth':4,'areaPerHour':4}," + PRICES + "}";
    JsonPath answer = plan("/v1/plans", hump(target));
    double area = answer.getDouble("grinding.area");
    double volume = answer.getDouble("grinding.volume");
    assertTrue(area > 0);
    assertEquals(area, answer.getDouble("depth.grindArea"), 1e-9);
    assertEquals(volume, answer.getDouble("depth.grindVolume"), 1e-9);
    assertTrue(answer.getDouble("grinding.deepest") <= 4.0001);
    assertEquals(area / 4 * 60, answer.getDouble("grinding.minutes"), 1e-6);
    double cost = Double.parseDouble(answer.getString("grinding.cost.amount"));
    assertEquals(4 * volume, cost, 0.0051);
    double unground = plan("/v1/plans", hump("{}")).getDouble("depth.volume");
    assertTrue(answer.getDouble("depth.volume") < unground - 100);
    assertTrue(answer.getList("safety.code").contains("silica-at-grinding"));
  }

  /** Ground plus filled equals the target: fill less ground is the same for every ground floor. */
  @Test
  void aGroundFloorTakesTheDifference() {
    String given = "'shape':'given','elevation':6";
    JsonPath plain = plan("/v1/depth-fields", hump("{" + given + ",'minimumDepth':0}"));
    JsonPath ground = plan("/v1/depth-fields", hump("{" + given + ",'grind':{'allowed':true}}"));
    double more = ground.getDouble("depth.volume") - ground.getDouble("depth.grindVolume");
    assertEquals(
        plain.getDouble("depth.volume") - plain.getDouble("depth.grindVolume"), more, 1e-4);
    assertEquals(3, ground.getDouble("depth.minimum"), 1e-9);
  }

  @Test
  void everyOptionHasItsCostAndTime() {
    JsonPath answer = plan("/v1/plans", hump("{" + PRICES + "}"));
    assertEquals(
        List.of("no-pour", "grind-and-patch", "flat", "level"), answer.getList("options.name"));
    assertEquals("0.00", answer.getString("options[0].cost.amount"));
    double level = Double.parseDouble(answer.getString("options[3].cost.amount"));
    assertEquals(2 * answer.getDouble("depth.volume"), level, 0.0051);
    double flat = Double.parseDouble(answer.getString("options[2].cost.amount"));
    assertTrue(flat <= level);
    // Cleaning 60 m2 at 30, priming at 80, sealing 32 m at 25 an hour, washing up 1 h.
    double before = 60 * (60 / 30.0 + 60 / 80.0 + 32 / 25.0 + 1);
    double pouring = 3 * answer.getDouble("pour.minutes");
    assertEquals(before + pouring, answer.getDouble("options[3].minutes"), 0.01);
  }
}
