package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Plans side by side, through the front door. */
class ComparisonsTest {

  private static final String PRICES =
      "{'target':{'prices':{'currency':'EUR','fill':'2.00','grind':'4.00'}}}";

  /** An invented rectangle with variations, each a name and a patch. */
  private static Response compare(String by, String... variations) {
    return RunningService.post("/v1/comparisons", request(by, variations));
  }

  private static ObjectNode request(String by, String... variations) {
    ObjectNode request = Refusals.tree("{}").deepCopy();
    request.set("base", MergePatch.merged(rectangle(), Refusals.tree(PRICES)));
    var list = request.putArray("variations");
    for (int i = 0; i < variations.length; i += 2) {
      list.addObject().put("name", variations[i]).set("patch", Refusals.tree(variations[i + 1]));
    }
    return by == null ? request : request.put("by", by);
  }

  private static JsonNode rectangle() {
    return RunningService.example("rectangle.json");
  }

  private static void refused(Response answer, String... codesAndPointers) {
    assertEquals(422, answer.statusCode(), answer.asString());
    for (int i = 0; i < codesAndPointers.length; i += 2) {
      assertEquals(codesAndPointers[i], answer.path("errors[" + i / 2 + "].code"));
      assertEquals(codesAndPointers[i + 1], answer.path("errors[" + i / 2 + "].pointer"));
    }
    assertEquals(codesAndPointers.length / 2, answer.<List<?>>path("errors").size());
  }

  @Test
  void rowsAreThoseOfThePlansByThemselves() {
    String plane = "{'target':{'shape':'plane'}}";
    Response answer = compare("volume", "a plane", plane, "nothing", "{}");
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(List.of("base", "a plane", "nothing"), answer.path("rows.name"));
    JsonNode patched = MergePatch.merged(rectangle(), Refusals.tree(plane));
    Response alone = RunningService.post("/v1/plans", patched);
    assertEquals(alone.<Object>path("depth.volume"), answer.path("rows[1].volume"));
    assertEquals(alone.<Object>path("quantities.bags.likely"), answer.path("rows[1].bags"));
    assertEquals(alone.<Object>path("quantities.bags.order"), answer.path("rows[1].order"));
    assertEquals(alone.<Object>path("pour.verdict"), answer.path("rows[1].verdict"));
    assertEquals(alone.<Object>path("flatness.after.verdict"), answer.path("rows[1].passes"));
    double cost = 2 * alone.jsonPath().getDouble("depth.volume");
    assertEquals(cost, Double.parseDouble(answer.path("rows[1].cost.amount")), 0.0051);
    Map<String, Object> base = answer.path("rows[0]");
    Map<String, Object> nothing = answer.path("rows[2]");
    nothing.put("name", "base");
    assertEquals(base, nothing);
  }

  @Test
  void grindingFirstIsCheaperWhereAHumpIsHigh() {
    Response answer =
        compare(
            "cost",
            "higher",
            "{'target':{'minimumDepth':9}}",
            "grind first",
            "{'target':{'grind':{'allowed':true}}}");
    assertEquals(List.of("base", "grind first", "higher"), answer.path("rows.name"));
    assertTrue(answer.jsonPath().getDouble("rows[1].grind") > 0);
    assertTrue(answer.jsonPath().getDouble("rows[1].grindArea") > 0);
    assertEquals(0, answer.jsonPath().getDouble("rows[2].grind"));
  }

  /** Fewer bags are no help where the edge sets before it is met. */
  @Test
  void aPourThatBreaksComesAfterOneThatHolds() {
    Response answer =
        compare(
            "bags",
            "hot",
            "{'crew':{'people':1},'conditions':{'air':29,'floor':29,'powder':29,'water':24}}",
            "deeper and cool",
            "{'target':{'minimumDepth':5},'crew':{'people':4,'mixers':2},"
                + "'conditions':{'air':16,'floor':16,'powder':16,'water':14}}");
    assertEquals(List.of("base", "deeper and cool", "hot"), answer.path("rows.name"));
    assertEquals("breaks", answer.path("rows[2].verdict"));
    assertTrue(answer.<Integer>path("rows[2].bags") < answer.<Integer>path("rows[1].bags"));
  }

  /** What cannot be planned says why, comes last and stops nobody else. */
  @Test
  void aVariationThatCannotBePlannedSaysWhy() {
    Response answer =
        compare(
            null,
            "under a door",
            "{'target':{'ceiling':[{'x':1,'y':1,'elevation':-9,'of':'pour'}]}}",
            "deeper",
            "{'target':{'minimumDepth':8}}");
    assertEquals("bags", answer.path("by"));
    assertEquals(List.of("base", "deeper", "under a door"), answer.path("rows.name"));
    assertEquals(List.of("#/target/ceiling/0"), answer.path("rows[2].errors.pointer"));
    assertNull(answer.path("rows[2].bags"));
  }

  @Test
  void ofEqualRowsTheOrderIsThatOfTheRequest() {
    Response answer = compare("bags", "b", "{}", "a", "{}", "c", "{'seed':1}");
    assertEquals(List.of("base", "b", "a", "c"), answer.path("rows.name"));
  }

  @Test
  void anotherOrderOfVariationsGivesTheSameRows() {
    String[] two = {"a", "{'target':{'minimumDepth':9}}", "b", "{'target':{'minimumDepth':7}}"};
    Response one = compare("bags", two[0], two[1], two[2], two[3]);
    Response other = compare("bags", two[2], two[3], two[0], two[1]);
    assertEquals(List.of("base", "b", "a"), one.path("rows.name"));
    assertEquals(one.asString(), other.asString());
  }

  @Test
  void patchesThatBreakTheContractAreToldAtTheirPlace() {
    refused(
        compare("bags", "a", "{'crew':{'people':'many'}}", "b", "{'tarket':1}", "c", "{}"),
        "wrong-type",
        "#/variations/0/patch/crew/people",
        "unknown-property",
        "#/variations/1/patch/tarket");
  }

  @Test
  void patchesKeepTheUnits() {
    refused(
        compare("bags", "a", "{'units':'us'}"), "units-of-the-base", "#/variations/0/patch/units");
  }

  @Test
  void namesAreTakenOnce() {
    refused(
        compare("bags", "a", "{}", "a", "{}", "base", "{}"),
        "variation-name-taken",
        "#/variations/1/name",
        "variation-name-taken",
        "#/variations/2/name");
  }

  @Test
  void costsWantPrices() {
    ObjectNode request = request("cost", "a", "{}");
    request.set("base", rectangle());
    refused(RunningService.post("/v1/comparisons", request), "cost-needs-prices", "#/by");
  }

  @Test
  void costsOfTwoCurrenciesHaveNoOrder() {
    String dollars = "{'target':{'prices':{'currency':'USD'}}}";
    refused(compare("cost", "a", "{}", "b", dollars), "currencies-differ", "#/by");
    Response answer = compare("bags", "b", dollars);
    assertEquals(List.of("EUR", "USD"), answer.path("rows.cost.currency"));
  }

  /** A price is for a litre in metric units, for a cubic foot in US ones. */
  @Test
  void costsAreThePriceTimesTheVolumeInTheCallersUnits() {
    for (String floor : List.of("sample-metric.json", "sample-us.json")) {
      ObjectNode request = request("cost", "same", "{}");
      request.set("base", MergePatch.merged(RunningService.example(floor), Refusals.tree(PRICES)));
      Response answer = RunningService.post("/v1/comparisons", request);
      assertEquals(200, answer.statusCode(), answer.asString());
      double cost = 2 * answer.jsonPath().getDouble("rows[0].volume");
      assertEquals(cost, Double.parseDouble(answer.path("rows[0].cost.amount")), 0.0051, floor);
    }
  }

  @Test
  void howManyVariationsThereMayBeIsTold() {
    Response answer = RunningService.given().get("/v1/capabilities");
    assertEquals(20, answer.<Integer>path("limits.variations"));
  }

  @Test
  void bodiesThatAreNone() {
    refused(compare("bags"), "too-few", "#/variations");
    refused(compare("beauty", "a", "{}"), "not-one-of", "#/by");
    refused(compare("bags", "a", "3"), "wrong-type", "#/variations/0/patch");
    String[] many = new String[42];
    for (int i = 0; i < many.length; i += 2) {
      many[i] = "v" + i;
      many[i + 1] = "{}";
    }
    refused(compare("bags", many), "too-many", "#/variations");
  }

  @Test
  void aBrokenBaseIsToldAtItsPlace() {
    ObjectNode request = request("bags", "a", "{}");
    ((ObjectNode) request.get("base")).remove("rooms");
    refused(RunningService.post("/v1/comparisons", request), "missing", "#/base/rooms");
  }

  /** Long lists are checked by a loop of their own. */
  @Test
  void aLongListOfTheBaseIsToldAtItsPlace() {
    ObjectNode request = request("bags", "a", "{}");
    var elevations = ((ObjectNode) request.at("/base/survey")).putArray("elevations");
    for (int i = 0; i < 1500; i++) {
      ObjectNode point = elevations.addObject().put("point", "p" + i).put("x", 1).put("y", 1);
      point.put("elevation", 0.5);
    }
    ((ObjectNode) elevations.get(1400)).put("y", "?");
    refused(
        RunningService.post("/v1/comparisons", request),
        "wrong-type",
        "#/base/survey/elevations/1400/y");
  }
}
