package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What a floor layer expects to be told, on an invented room of 4 m by 3 m that falls by 11 mm. The
 * rules are common practice, no source.
 */
class AdviceTest {

  private final ObjectNode floor = RunningService.example("rectangle.json");

  @Test
  void cementOnGypsumWantsAPrimerThatIsolates() {
    base("gypsum");
    assertTold("cement-on-gypsum", "#/rooms/0/substrate");
    floor.putObject("material").put("id", "gypsum-standard-25");
    assertNotTold("cement-on-gypsum");
    assertTold("gypsum-base", "#/rooms/0/substrate");
  }

  @Test
  void basesAskForTheirPreparation() {
    base("concrete");
    assertNotTold("tile-base", "wood-base", "cement-on-gypsum", "gypsum-base");
    assertTold("slab-moisture-unknown", "#/conditions/slab");
    base("tile");
    assertTold("tile-base", "#/rooms/0/substrate");
    base("wood");
    assertTold("wood-base", "#/rooms/0/substrate");
    assertNotTold("slab-moisture-unknown");
  }

  /** Tile asks for both of its edges, glued wood for one of two (ANSI A108.02, trade guideline). */
  @Test
  void shortEdgesOfACoveringAreLeftToTheStraightedge() {
    floor.put("covering", "tile");
    assertTold("covering-short-edge", "#/covering");
    floor.put("covering", "wood-glued");
    assertNotTold("covering-short-edge");
  }

  @Test
  void minimumDepthBelowWoodOrSheetIsTold() {
    minimumDepth(3);
    assertNotTold("minimum-below-sheet", "minimum-below-wood");
    minimumDepth(2.9);
    assertTold("minimum-below-sheet", "#/target/minimumDepth");
    base("wood");
    minimumDepth(9.9);
    assertTold("minimum-below-wood", "#/target/minimumDepth");
    minimumDepth(10);
    assertNotTold("minimum-below-sheet", "minimum-below-wood");
  }

  /** Three readings are enough for 12 m2 at one on 4 m2, and not for 12.3 m2. */
  @Test
  void fewReadingsLeaveFlatnessUnclear() {
    assertNotTold("few-readings");
    assertEquals("within", answer().getString("options[0].passes"));
    ArrayNode readings = (ArrayNode) floor.path("survey").path("elevations");
    while (readings.size() > 3) {
      readings.remove(3);
    }
    ((ObjectNode) readings.get(1)).put("y", 2.7);
    assertNotTold("few-readings");
    wider(4.1);
    assertTold("few-readings", "#/rooms/0");
    assertEquals("unclear", answer().getString("options[0].passes"));
  }

  @Test
  void oneWideSetupCannotShowATiltedLaser() {
    assertNotTold("tilt-unseen");
    table(0, 0, 3, 0, 0, 2.9);
    assertNotTold("tilt-unseen");
    wider(8);
    table(0, 0, 8, 0, 0, 2.9);
    assertTold("tilt-unseen", "#/survey");
    assertTrue(sentence("tilt-unseen").contains(" by 0.5 mm"));
  }

  @Test
  void whatPassesNeedsNoPourAndNoGrinding() {
    JsonPath answer = answer();
    assertTold("floor-passes-already", "#");
    Map<String, Object> grindAndPatch = answer.getMap("options[1]");
    assertEquals("within", grindAndPatch.get("passes"));
    assertEquals(0, ((Number) grindAndPatch.get("bags")).intValue());
    assertEquals(0, ((Number) grindAndPatch.get("grindArea")).doubleValue());
  }

  /** A hollow of 40 mm passes no straightedge. */
  @Test
  void whatDoesNotPassIsNotSaidToPass() {
    for (int i = 0; i < 9; i++) {
      ObjectNode reading = (ObjectNode) floor.path("survey").path("elevations").get(i);
      reading.put("elevation", i == 4 ? -40 : 0);
    }
    assertNotTold("floor-passes-already");
  }

  @Test
  void layersAreNotPouredInOne() {
    assertNotTold("lifts-wait-between");
    minimumDepth(25);
    assertTold("lifts-wait-between", "#/material");
    assertTold("deep-pour-dries-longer", "#/material");
  }

  @Test
  void batchesAddUpToTheLikelyBags() {
    JsonPath answer = answer();
    List<Integer> bags = answer.getList("pour.batches.bags");
    int poured = bags.stream().mapToInt(b -> b).sum();
    int likely = answer.getInt("quantities.bags.likely");
    int bays = answer.getList("pour.bays").size();
    assertTrue(poured >= likely - 1 && poured <= likely + bays, poured + " of " + likely);
    String sentence = sentence("pour-at-usual-times");
    assertTrue(sentence.contains(" " + poured + " bags"), sentence);
    assertTrue(sentence.contains(" " + likely + " likely ones"), sentence);
  }

  @Test
  void hotterThanTheSheetNothingHolds() {
    floor.putObject("crew").put("people", 6).put("mixers", 3).put("barrels", 9);
    air(20);
    assertEquals("holds", answer().getString("pour.verdict"));
    air(31);
    assertEquals("tight", answer().getString("pour.verdict"));
    assertTrue(answer().getList("pour.reasons.code").contains("hotter-than-sheet"));
  }

  private void air(double temperature) {
    floor
        .putObject("conditions")
        .put("air", temperature)
        .put("floor", 18)
        .put("powder", 18)
        .put("water", 15);
  }

  private void base(String substrate) {
    ((ObjectNode) floor.path("rooms").get(0)).put("substrate", substrate);
  }

  private void minimumDepth(double depth) {
    floor.putObject("target").put("minimumDepth", depth);
  }

  private void wider(double length) {
    ArrayNode ring =
        (ArrayNode) floor.path("rooms").get(0).path("outline").path("coordinates").get(0);
    for (int corner = 1; corner <= 2; corner++) {
      ((ArrayNode) ring.get(corner)).set(0, floor.numberNode(length));
    }
  }

  /** Readings of one level laser. */
  private void table(double... places) {
    ObjectNode table = floor.putObject("survey").putObject("table");
    table.putArray("columns").add("x").add("y").add("reading");
    ArrayNode values = table.putArray("values");
    for (int i = 0; i < places.length; i += 2) {
      values.add(places[i]).add(places[i + 1]).add(1200);
    }
  }

  private JsonPath answer() {
    var answer = RunningService.post("/v1/plans", floor);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }

  private void assertTold(String code, String pointer) {
    List<Map<String, String>> warnings = answer().getList("warnings");
    assertTrue(
        warnings.stream()
            .anyMatch(w -> code.equals(w.get("code")) && pointer.equals(w.get("pointer"))),
        code + " is not among " + warnings);
  }

  private void assertNotTold(String... codes) {
    List<String> told = answer().getList("warnings.code");
    for (String code : codes) {
      assertFalse(told.contains(code), code);
    }
  }

  private String sentence(String code) {
    return answer().getString("warnings.find { it.code == '" + code + "' }.detail");
  }
}
