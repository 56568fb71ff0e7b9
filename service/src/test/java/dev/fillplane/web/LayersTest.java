package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.render.Layer;
import dev.fillplane.web.json.Words;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The layers of a depth map by their query parameter. */
class LayersTest {

  /** What the legend says of each layer of the sample floor. */
  private static final Map<String, String> SAID =
      Map.of(
          "depth", "5 to 10 mm",
          "contours", "contour, every 5 mm",
          "readings", "suspect reading: take again",
          "ribbons", "order of pouring",
          "guides", "screed rail",
          "next", "take a reading here, best first",
          "gaps", "straightedge over too large a gap",
          "deviation", "floor unsure by 2 mm or more");

  @Test
  void eachLayerIsDrawnAlone() {
    for (String layer : SAID.keySet()) {
      String svg = draw(layer).asString();
      SAID.forEach((name, text) -> assertEquals(name.equals(layer), svg.contains(text), name));
    }
  }

  @Test
  void allButDeviationAndGapsUnlessTold() {
    String usual = RunningService.post("/v1/depth-maps", RunningService.sample()).asString();
    assertEquals(usual, draw("next,guides,depth,contours,readings,ribbons").asString());
    assertFalse(usual.contains(SAID.get("deviation")));
    assertFalse(usual.contains(SAID.get("gaps")));
    assertTrue(usual.contains(SAID.get("next")));
  }

  /** A hump is ground, and the rest is poured in two lifts. */
  @Test
  void groundAreasAndLowerLiftsAreDrawn() {
    ObjectNode request =
        Surveyed.room(
            "metric",
            6,
            4,
            0.5,
            (x, y) -> x > 3 ? -40 : 8 * Math.max(0, 1 - Math.hypot(x - 1.25, y - 2.25)));
    request.withObject("survey").put("readingError", 0.2);
    request.set("target", Refusals.tree("{'grind':{'allowed':true}}"));
    String svg = RunningService.post("/v1/depth-maps", request).asString();
    assertTrue(svg.contains("grind first, height to take off"));
    assertTrue(svg.contains(">grind "));
    assertTrue(svg.contains("pocket or lower lift: pour it first"));
  }

  @Test
  void jointsAndWhatIsKeptOpenAreDrawn() {
    String svg =
        RunningService.post("/v1/depth-maps", RunningService.example("features.json")).asString();
    assertTrue(svg.contains("joint with a stop, height in mm"));
    assertTrue(svg.contains(">moving joint "));
    assertTrue(svg.contains("kept open, not poured"));
    assertTrue(svg.contains(">drain<"));
  }

  @Test
  void theContractNamesEveryLayer() {
    List<String> told = new ArrayList<>();
    JsonNode layers = RunningService.CONTRACT.document().at("/components/parameters/Layers/schema");
    layers.at("/items/enum").forEach(word -> told.add(word.asText()));
    assertEquals(Arrays.stream(Layer.values()).map(Words::of).toList(), told);
    assertEquals(told.size(), layers.get("maxItems").asInt());
  }

  @Test
  void otherWordsAreRefused() {
    for (String bad : new String[] {"", "dept", "depth,,next", "DEPTH", "depth;next"}) {
      Response answer = draw(bad);
      assertEquals(400, answer.statusCode(), bad);
      assertEquals("application/problem+json", answer.contentType());
      assertEquals("urn:fillplane:problem:bad-request", answer.path("type"));
      assertEquals(
          "The parameter layers must be a list, with commas, of: depth, contours, readings,"
              + " ribbons, guides, next, ground, passes, deviation, gaps.",
          answer.path("detail"));
    }
  }

  private static Response draw(String layers) {
    return RunningService.given()
        .contentType("application/json")
        .queryParam("layers", layers)
        .body(RunningService.sample().toString())
        .post("/v1/depth-maps");
  }
}
