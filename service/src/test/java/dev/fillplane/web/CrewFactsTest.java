package dev.fillplane.web;

import static dev.fillplane.web.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Crews on an invented passage of 8 by 1.2 m that takes about five bags. That a crew holds or
 * breaks is common practice, no source.
 */
class CrewFactsTest {

  private static final double WARM = 35;
  private static final double COOL = 14;

  private final ObjectNode floor = passage();

  /** Alone in warm air the edge is lost above three or four bags. */
  @Test
  void oneAloneInWarmAirBreaks() {
    ObjectNode crew = crew(1, 1);
    crew.put("barrels", 3).put("preFilled", 3);
    day(28, 28);
    JsonNode plan = plan();
    assertAboutFiveBags(plan);
    assertEquals("breaks", verdict(plan));
  }

  /** A warm day in the 90s F, bags in the sun, water warm from the tap. */
  @Test
  void aWarmDayBreaks() {
    crew(3, 1);
    day(WARM, WARM);
    assertEquals("breaks", verdict(plan()));
  }

  /** A cool day, cool water, one at the mixer outside and two people inside. */
  @Test
  void aCoolDayWithTheMixerOutsideHolds() {
    crew(3, 1).put("carryDistance", 20);
    day(COOL, 12);
    assertEquals("holds", verdict(plan()));
  }

  /** One mixing station falls behind in warm air, unless something changes. */
  @Test
  void fiveBagsWithOneMixingStationFallBehind() {
    crew(3, 1);
    day(25, 25);
    JsonNode plan = plan();
    assertAboutFiveBags(plan);
    assertTrue(!verdict(plan).equals("holds"), verdict(plan));
    assertTrue(!plan.at("/pour/changes").isEmpty());
  }

  /** Three barrels with water standing ready help at the start: no waiting for the tap. */
  @Test
  void threeBarrelsFilledAheadHelpAtTheStart() {
    ObjectNode crew = crew(3, 1).put("barrels", 3);
    double dry = plan().at("/pour/batches/0/placed").doubleValue();
    crew.put("preFilled", 3);
    assertEquals(dry - 0.5, plan().at("/pour/batches/0/placed").doubleValue(), 1e-9);
    crew.put("people", 1);
    double filled = plan().at("/pour/batches/2/placed").doubleValue();
    crew.put("preFilled", 0);
    assertEquals(filled + 1.5, plan().at("/pour/batches/2/placed").doubleValue(), 1e-9);
  }

  /** The material heals for 3 min, a batch is under way for 3.6: said plainly. */
  @Test
  void noTimeToPlace() {
    floor.putObject("material").put("id", "cement-standard-25").put("healingTime", 3);
    crew(6, 3);
    JsonNode plan = plan();
    assertEquals("breaks", verdict(plan));
    assertEquals("no-time-to-place", plan.at("/pour/reasons/0/code").asText());
    assertTrue(plan.at("/pour/reasons/0/text").asText().contains("3.6 min"), plan.toString());
  }

  @Test
  void aPumpNeedsNoBarrels() {
    crew(3, 1).put("placing", "pump");
    day(25, 25);
    JsonNode plan = plan();
    assertEquals("holds", verdict(plan));
    assertEquals("pump-is-slowest", plan.at("/pour/reasons/1/code").asText());
  }

  @Test
  void aBreakStopsTheMixing() {
    ObjectNode crew = crew(3, 1);
    day(COOL, 12);
    double straight = plan().at("/pour/minutes").doubleValue();
    assertEquals("holds", verdict(plan()));
    crew.putArray("breaks").addObject().put("at", 0.2).put("length", 10);
    // Mixing would begin at 0.5, when the water is measured; it begins at 10.2.
    assertEquals(straight + 9.7, plan().at("/pour/minutes").doubleValue(), 1e-9);
    assertEquals("holds", verdict(plan()));
    crew.putArray("breaks").addObject().put("at", 6).put("length", 30);
    assertEquals("breaks", verdict(plan()), "no edge waits for half an hour");
  }

  @Test
  void timesByTheClock() {
    crew(3, 1).put("start", "07:30");
    JsonNode first = plan().at("/pour/batches/0");
    assertEquals("07:30", first.at("/clock/mixStart").asText());
    assertEquals("07:34", first.at("/clock/ready").asText());
    assertEquals("07:35", first.at("/clock/placed").asText());
  }

  @Test
  void crewsThatCannotWorkAreRefused() {
    refused(sample -> crew(sample).put("people", 0), "too-small", "#/crew/people");
    refused(sample -> crew(sample).put("mixTime", 1), "mixed-too-short", "#/crew/mixTime");
    refused(sample -> crew(sample).put("mixTime", -1), "out-of-range", "#/crew/mixTime");
    refused(
        sample -> crew(sample).put("preFilled", 4), "more-filled-than-barrels", "#/crew/preFilled");
    refused(sample -> crew(sample).put("start", "7:30"), "bad-text", "#/crew/start");
    refused(sample -> crew(sample).put("start", "24:00"), "bad-text", "#/crew/start");
    refused(sample -> crew(sample).put("placing", "crane"), "not-one-of", "#/crew/placing");
    refused(
        sample -> crew(sample).put("carryDistance", -1), "out-of-range", "#/crew/carryDistance");
    refused(sample -> crew(sample).put("waterTime", 61), "out-of-range", "#/crew/waterTime");
    refused(
        sample -> crew(sample).putArray("breaks").addObject().put("at", -1).put("length", 5),
        "out-of-range",
        "#/crew/breaks/0/at");
    refused(
        sample -> sample.putObject("material").put("id", "cement-standard-25").put("mixTime", 0),
        "too-small",
        "#/material/mixTime");
  }

  // --- how

  private static ObjectNode crew(ObjectNode sample) {
    return (ObjectNode) sample.get("crew");
  }

  private static ObjectNode passage() {
    ObjectNode floor = RunningService.example("rectangle.json");
    ArrayNode ring = (ArrayNode) floor.at("/rooms/0/outline/coordinates/0");
    ring.removeAll();
    for (List<Double> at :
        List.of(
            List.of(0.0, 0.0),
            List.of(8.0, 0.0),
            List.of(8.0, 1.2),
            List.of(0.0, 1.2),
            List.of(0.0, 0.0))) {
      ring.addArray().add(at.get(0)).add(at.get(1));
    }
    ObjectNode door = (ObjectNode) floor.at("/rooms/0/openings/0");
    door.putArray("from").add(0).add(0.2);
    door.putArray("to").add(0).add(1.1);
    ArrayNode readings = floor.putObject("survey").putArray("elevations");
    for (int i = 0; i < 10; i++) {
      ObjectNode reading = readings.addObject().put("point", "" + i);
      reading.put("x", 0.5 + 1.6 * (i / 2)).put("y", i % 2 == 0 ? 0.2 : 1.0).put("elevation", 0);
    }
    floor.putObject("target").put("minimumDepth", 7);
    return floor;
  }

  private ObjectNode crew(int people, int mixers) {
    return floor.putObject("crew").put("people", people).put("mixers", mixers);
  }

  private void day(double air, double water) {
    floor
        .putObject("conditions")
        .put("air", air)
        .put("floor", air)
        .put("powder", air)
        .put("water", water);
  }

  private static void assertAboutFiveBags(JsonNode plan) {
    int bags = plan.at("/pour/totals/bags").intValue();
    assertTrue(bags >= 5 && bags <= 6, bags + " bags");
  }

  private static String verdict(JsonNode plan) {
    return plan.at("/pour/verdict").asText();
  }

  private JsonNode plan() {
    Response answer = RunningService.post("/v1/plans", floor);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
