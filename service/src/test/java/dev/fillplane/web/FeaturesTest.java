package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Features of a floor over the wire, on the invented hall of the example. */
class FeaturesTest {

  private final ObjectNode hall = RunningService.example("features.json");

  @Test
  void movingJointDividesTheHall() {
    JsonPath plan = plan();
    assertEquals(List.of("hall 1", "hall 2"), plan.getList("pour.bays.id"));
    assertEquals(List.of("moving-joint"), plan.getList("pour.joints.kind"));
    assertEquals(4.0, plan.getDouble("pour.joints[0].length"), 1e-9);
  }

  @Test
  void whatStaysOpenIsToldWithWhatToDo() {
    JsonPath plan = plan();
    assertEquals(
        List.of("carry-joint-through", "tape-off", "seal-cable"),
        plan.getList("preparation.keepOpen.what.code"));
    assertEquals(List.of(0, 1, 4), plan.getList("preparation.keepOpen.feature"));
    assertTrue(plan.getString("preparation.keepOpen[1].what.text").contains("drain"));
    assertEquals("Polygon", plan.getString("preparation.keepOpen[1].outline.type"));
    assertEquals(1.3, plan.getDouble("preparation.crackLength"), 1e-9);
    // 10 by 40 mm by 8 m are 3.2 L.
    assertEquals(3.2, plan.getDouble("preparation.foamVolume"), 1e-9);
    List<String> codes = plan.getList("warnings.code");
    assertTrue(
        codes.containsAll(
            List.of("moving-joint-carried-through", "kept-open", "crack-must-be-dormant")));
  }

  @Test
  void railsOfADeepHallAreToldInFull() {
    JsonPath plan = plan();
    List<Object> supports = plan.getList("rails.support");
    assertTrue(supports.contains("wall"));
    assertTrue(plan.getDouble("rails[0].ripWidth") >= 10);
    List<Number> heights = plan.getList("rails[0].stations.height");
    List<Number> shims = plan.getList("rails[0].stations.shim");
    for (int i = 0; i < heights.size(); i++) {
      double rip = plan.getDouble("rails[0].ripWidth");
      assertEquals(heights.get(i).doubleValue(), rip + shims.get(i).doubleValue(), 1e-3);
    }
  }

  @Test
  void hoseLaysLanes() {
    int beads = plan().getList("pour.bays[0].ribbons").size();
    hall.withObject("/crew").put("placing", "pump");
    int lanes = plan().getList("pour.bays[0].ribbons").size();
    assertTrue(lanes <= 3 && lanes < beads, lanes + " lanes, " + beads + " beads");
  }

  @Test
  void wrongFeaturesAreToldEachAtItsPlace() {
    ArrayNode features = (ArrayNode) hall.get("features");
    ((ArrayNode) features.get(0).get("from")).removeAll().add(30).add(0);
    ((ArrayNode) features.get(0).get("to")).removeAll().add(30).add(4);
    ((ObjectNode) features.get(1)).remove("at");
    ((ObjectNode) features.get(3)).remove("depth");
    var answer = RunningService.post("/v1/plans", hall);
    assertEquals(422, answer.statusCode());
    assertEquals(
        List.of(
            "feature-outside #/features/0",
            "feature-without-place #/features/1",
            "gap-without-size #/features/3"),
        answer.jsonPath().getList("errors.collect { it.code + ' ' + it.pointer }"));
  }

  private JsonPath plan() {
    var answer = RunningService.post("/v1/plans", hall);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }
}
