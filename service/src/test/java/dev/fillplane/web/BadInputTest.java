package dev.fillplane.web;

import static dev.fillplane.web.Refusals.PLANS;
import static dev.fillplane.web.Refusals.outline;
import static dev.fillplane.web.Refusals.reading;
import static dev.fillplane.web.Refusals.refused;
import static dev.fillplane.web.Refusals.survey;
import static dev.fillplane.web.Refusals.tree;
import static dev.fillplane.web.Refusals.warned;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Requests of the contract that make no sense: each gets its code at its place. */
class BadInputTest {

  // --- against sense: rooms

  @Test
  void crossingOutline() {
    refused(
        sample -> outline(sample, 0, "[[0,0],[4,4],[4,0],[0,4],[0,0]]"),
        "outline-crosses-itself",
        "#/rooms/0/outline/coordinates/0");
  }

  @Test
  void holeOutside() {
    refused(
        sample ->
            outline(sample, 0, "[[0,0],[4,0],[4,4],[0,4],[0,0]]", "[[9,9],[10,9],[10,10],[9,9]]"),
        "island-outside",
        "#/rooms/0/outline/coordinates/1");
  }

  @Test
  void roomOfNoArea() {
    refused(
        sample -> outline(sample, 0, "[[0,0],[4,0],[8,0],[0,0]]"),
        "outline-too-small",
        "#/rooms/0/outline/coordinates/0");
  }

  @Test
  void roomsThatOverlap() {
    refused(
        sample -> {
          ObjectNode twin = sample.withArray("rooms").get(0).deepCopy();
          twin.put("id", "twin");
          sample.withArray("rooms").add(twin);
        },
        "rooms-overlap",
        null);
  }

  @Test
  void outlineOfTooManyPositions() {
    refused(
        sample -> outline(sample, 0, circle(3, 1_500), circle(1, 600)),
        "outline-too-detailed",
        "#/rooms/0/outline/coordinates");
    refused(
        sample -> outline(sample, 0, circle(3, 2_001)),
        "too-many",
        "#/rooms/0/outline/coordinates/0");
  }

  private static String circle(double radius, int corners) {
    StringBuilder ring = new StringBuilder("[");
    for (int i = 0; i <= corners; i++) {
      double angle = 2 * Math.PI * (i % corners) / corners;
      ring.append(i == 0 ? "[" : ",[").append(radius * Math.cos(angle));
      ring.append(',').append(radius * Math.sin(angle)).append(']');
    }
    return ring + "]";
  }

  // --- against sense: survey

  @Test
  void noReadingAtAll() {
    refused(sample -> sample.set("survey", tree("{'setups':[]}")), "too-few", "#/survey/setups");
    refused(sample -> sample.set("survey", tree("{}")), "no-readings", "#/survey");
  }

  @Test
  void oneAndTwoReadings() {
    refused(sample -> survey(sample, "a 1 1 1200"), "too-few-readings", "#/survey");
    refused(sample -> survey(sample, "a 1 1 1200", "b 2 1 1201"), "too-few-readings", "#/survey");
  }

  @Test
  void readingsOnALine() {
    refused(
        sample -> survey(sample, "a 1 1 1200", "b 2 1 1201", "c 3 1 1202", "d 4 1 1203"),
        "readings-on-a-line",
        "#/survey");
  }

  @Test
  void noReadingInAnyRoom() {
    refused(
        sample -> survey(sample, "a 91 1 1200", "b 92 1 1201", "c 93 2 1202"),
        "no-reading-in-a-room",
        "#/survey");
  }

  @Test
  void floorFarBeyondTheReadings() {
    ObjectNode sample = RunningService.sample();
    survey(sample, "a 1 1 1200", "b 2 1 1201", "c 1 2 1202", "d 2 2 1200", "e 1.5 1.5 1200");
    warned(sample, "floor-beyond-readings");
  }

  @Test
  void temperaturesThatAreNotTold() {
    ObjectNode sample = RunningService.sample();
    sample.set("conditions", tree("{'air':21,'water':12}"));
    Response answer = RunningService.post(PLANS, sample);
    List<String> details = answer.path("warnings.detail");
    assertTrue(
        details.stream()
            .anyMatch(detail -> detail.contains("usual ones were taken for: floor, bags")),
        details.toString());
  }

  @Test
  void duplicatesThatDisagree() {
    ObjectNode sample = RunningService.sample();
    ObjectNode twin = reading(sample, 3).deepCopy();
    twin.put("reading", twin.get("reading").doubleValue() + 25);
    ((ArrayNode) sample.at("/survey/setups/0/readings")).add(twin);
    warned(sample, "laser-moved");
  }

  @Test
  void unknownBenchmark() {
    refused(
        sample ->
            ((ArrayNode) sample.at("/survey/benchmarks"))
                .add(tree("{'point':'nowhere','elevation':0}")),
        "unknown-benchmark",
        "#/survey/benchmarks/1/point");
  }

  @Test
  void setupsThatShareNoPoint() {
    refused(
        sample ->
            ((ArrayNode) sample.at("/survey/setups"))
                .add(tree("{'id':'lost','readings':[{'point':'q1','x':1,'y':1,'reading':1000}]}")),
        "setups-not-connected",
        null);
  }

  @Test
  void pointNobodyKnowsIsIgnored() {
    ObjectNode sample = RunningService.sample();
    ((ObjectNode) sample.get("survey")).set("ignore", tree("['nobody']"));
    warned(sample, null);
  }

  // --- against sense: target and material

  @Test
  void minimumDepthAboveACeiling() {
    refused(
        sample ->
            sample.set(
                "target",
                tree("{'minimumDepth':3,'ceiling':[{'x':1,'y':1,'elevation':-500,'of':'pour'}]}")),
        "ceiling-below-minimum",
        "#/target/ceiling/0");
  }

  @Test
  void ceilingOfTheFinishWithoutItsThickness() {
    refused(
        sample -> {
          sample.remove("coveringThickness");
          sample.set("target", tree("{'ceiling':[{'x':1,'y':1,'elevation':500,'of':'finish'}]}"));
        },
        "covering-thickness-needed",
        null);
  }

  @Test
  void sheetThatContradictsItself() {
    refused(
        sample ->
            sample.set(
                "material",
                tree(
                    "{'bagMass':25,'waterPerBag':5,'yieldPerBag':11,'wetDensity':2000,"
                        + "'minimumLift':3,'maximumLift':30}")),
        "sheet-yield-contradicts-density",
        null);
  }

  @Test
  void waterOutsideTheSheet() {
    refused(
        sample ->
            sample.set(
                "material",
                tree(
                    "{'bagMass':25,'waterPerBag':7,'wetDensity':2000,"
                        + "'waterRange':{'from':4.75,'to':5.25}}")),
        "water-outside-sheet",
        "#/material/waterPerBag");
  }

  @Test
  void quantityOutsideItsRange() {
    refused(
        sample -> ((ObjectNode) sample.get("conditions")).put("air", 900),
        "out-of-range",
        "#/conditions/air");
  }

  @Test
  void variogramsOutsideTheirRange() {
    for (String name : List.of("nugget", "sill", "range")) {
      refused(
          sample ->
              sample
                  .putObject("surface")
                  .set(
                      "variogram",
                      ((ObjectNode) tree("{'shape':'gaussian','nugget':1,'sill':4,'range':4}"))
                          .put(name, name.equals("range") ? 1e-300 : 1e12)),
          "out-of-range",
          "#/surface/variogram/" + name);
    }
  }

  @Test
  void numberWithoutEndInPlaceOfAWord() {
    refused(
        sample -> sample.put("covering", "Infinity"),
        "1e999",
        422,
        "number-too-large",
        "#/covering");
  }

  @Test
  void timesWithoutEndOfASheet() {
    refused(
        sample -> ((ObjectNode) sample.get("material")).put("workingTime", 1e15),
        "out-of-range",
        "#/material/workingTime");
    refused(
        sample -> ((ObjectNode) sample.get("material")).put("primerCoverage", 1e-308),
        "out-of-range",
        "#/material/primerCoverage");
  }

  @Test
  void layerOfAKilometre() {
    refused(
        sample ->
            ((ObjectNode) sample.get("material")).put("minimumLift", 1e6).put("maximumLift", 2e6),
        "out-of-range",
        "#/material/minimumLift");
  }

  @Test
  void moreBatchesThanBarrelsMix() {
    refused(
        sample ->
            sample.set("material", tree("{'bagMass':25,'waterPerBag':5,'yieldPerBag':0.011}")),
        "too-many-batches",
        "#/crew/bagsPerBatch");
  }

  @Test
  void floorLargerThanATown() {
    refused(
        sample -> outline(sample, 1, "[[0,9],[9e6,9],[9e6,9e6],[0,9e6],[0,9]]"),
        "out-of-range",
        "#/rooms");
  }

  @Test
  void gridTooFine() {
    refused(sample -> sample.set("grid", tree("{'cell':0.01}")), "grid-too-fine", "#/grid/cell");
  }

  @Test
  void noAnswerNamesAClass() {
    for (String body :
        List.of("{", "[]", "3", "null", "\"x\"", "{\"units\":[]}", "{\"survey\":{\"setups\":3}}")) {
      String text = RunningService.post(PLANS, body).asString();
      for (String inner : List.of("java.", "dev.fillplane", "jackson", "Exception", "\tat ")) {
        assertFalse(text.contains(inner), text);
      }
    }
  }
}
