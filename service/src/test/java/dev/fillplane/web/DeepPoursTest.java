package dev.fillplane.web;

import static dev.fillplane.web.Refusals.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Layers, thin parts and aggregate through the front door, on a flat floor of 24 m2. */
class DeepPoursTest {

  private static final String SHEET =
      "'bagMass':25,'waterPerBag':5,'yieldPerBag':15,'minimumLift':3,'maximumLift':30,"
          + "'workingTime':15,'healingTime':9";

  /** 32 mm with a maximum of 30 is 20 + 12, never 30 + 2 (common practice, no source). */
  @Test
  void aDeepBoxIsTwentyAndTwelve() {
    JsonPath plan = plan(32, "{" + SHEET + "}");
    assertEquals(List.of(1, 2), plan.getList("quantities.lifts.number"));
    assertNumbers(List.of(20, 12), plan.getList("quantities.lifts.maximumDepth"));
    assertNumbers(List.of(24 * 20, 24 * 12), plan.getList("quantities.lifts.volume"));
    assertNumbers(List.of(24, 24), plan.getList("quantities.lifts.area"));
    assertNumbers(List.of(0, 0), plan.getList("quantities.lifts.thinArea"));
    assertNull(plan.get("quantities.lifts[0].waitBefore"));
    assertEquals(
        plan.getDouble("drying.nextLift"), plan.getDouble("quantities.lifts[1].waitBefore"), 1e-9);
    assertEquals(
        plan.getDouble("quantities.primer.liquid"),
        plan.getDouble("quantities.lifts[0].primer.liquid")
            + plan.getDouble("quantities.lifts[1].primer.liquid"),
        1e-9);
    assertTrue(plan.getInt("quantities.lifts[0].bags") > plan.getInt("quantities.lifts[1].bags"));
    assertNull(plan.get("quantities.aggregate"));
  }

  @Test
  void aSkimIsThin() {
    JsonPath plan = plan(2, "{" + SHEET + "}");
    assertEquals(3, plan.getDouble("quantities.thin.minimum"), 1e-9);
    assertEquals(24, plan.getDouble("quantities.thin.area"), 1e-6);
    assertEquals(48, plan.getDouble("quantities.thin.volume"), 1e-6);
    assertEquals(1, plan.getDouble("quantities.thin.missing"), 1e-6);
    assertEquals(24, plan.getDouble("quantities.thin.grindVolume"), 1e-6);
    assertTrue(plan.getList("warnings.code").contains("thin-area"));
    JsonPath thick = plan(3, "{" + SHEET + "}");
    assertEquals(0, thick.getDouble("quantities.thin.area"));
    assertTrue(!thick.getList("warnings.code").contains("thin-area"));
  }

  /** 50 % of a 25 kg bag adds 4.7 L, 31 %: common practice, derived with grains of 2650 kg/m3. */
  @Test
  void aggregateIsOfferedWhereTheSheetAllowsIt() {
    JsonPath plan = plan(40, "{" + SHEET + ",'aggregate':{}}");
    assertEquals(0.31, plan.getDouble("quantities.aggregate.yieldGain"), 0.005);
    assertEquals(25, plan.getDouble("quantities.aggregate.minimumDepth"), 1e-9);
    assertEquals(24, plan.getDouble("quantities.aggregate.area"), 1e-6);
    assertEquals(24 * 37, plan.getDouble("quantities.aggregate.volume"), 1e-6);
    assertEquals(
        plan.getInt("quantities.bags.likely"),
        plan.getInt("quantities.aggregate.bags") + plan.getInt("quantities.aggregate.saved"));
  }

  @Test
  void aggregateThatMakesNoSense() {
    refusedAggregate("{'shareTo':1.5}", "shareTo");
    refusedAggregate("{'shareFrom':-0.1}", "shareFrom");
    refusedAggregate("{'minimumDepth':-25}", "minimumDepth");
    refusedAggregate("{'neatCap':-3}", "neatCap");
    refusedAggregate("{'grainDensity':0}", "grainDensity");
    refused("{'shareFrom':0.6,'shareTo':0.5}", "range-upside-down", "");
    refused("{'neatCap':30,'minimumDepth':25}", "aggregate-cap-too-thick", "/neatCap");
    refused("{'minimumDepth':25000}", "out-of-range", "/minimumDepth");
    refused("{'neatCap':900}", "out-of-range", "/neatCap");
    refused("{'grainDensity':2.65}", "out-of-range", "/grainDensity");
  }

  private static void refusedAggregate(String aggregate, String name) {
    refused(aggregate, null, "/" + name);
  }

  private static void refused(String aggregate, String code, String below) {
    Refusals.refused(
        sample -> sample.set("material", tree("{" + SHEET + ",'aggregate':" + aggregate + "}")),
        code,
        "#/material/aggregate" + below);
  }

  /** A level target so many millimetres over a flat floor. */
  private static JsonPath plan(double depth, String material) {
    ObjectNode request = RunningService.sample();
    request.remove("conditions");
    request.set(
        "rooms",
        tree(
            "[{'id':'a','outline':{'type':'Polygon','coordinates':"
                + "[[[0,0],[6,0],[6,4],[0,4],[0,0]]]},'openings':[{'id':'out','from':[0,1],"
                + "'to':[0,2],'kind':'exit'}]}]"));
    request.set(
        "survey",
        tree(
            "{'elevations':[{'point':'1','x':0,'y':0,'elevation':0},"
                + "{'point':'2','x':6,'y':0,'elevation':0},{'point':'3','x':6,'y':4,'elevation':0},"
                + "{'point':'4','x':0,'y':4,'elevation':0}]}"));
    request.remove("probes");
    request.set("target", tree("{'shape':'given','elevation':" + depth + "}"));
    request.set("material", tree(material));
    Response answer = RunningService.post(Refusals.PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }

  private static void assertNumbers(List<Integer> expected, List<Number> found) {
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < expected.size(); i++) {
      assertEquals(expected.get(i), found.get(i).doubleValue(), 1e-6);
    }
  }
}
