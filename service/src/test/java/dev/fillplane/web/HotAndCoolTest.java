package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.material.Catalogue;
import io.restassured.response.Response;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Heat and crew against the wet edge. */
class HotAndCoolTest {

  /** The better the later. */
  private static final List<String> VERDICTS = List.of("breaks", "tight", "holds");

  private static final double HOT = 95;
  private static final double COOL = 60;
  private static final double COOL_WATER = 50;

  /**
   * Water, bags and air all near 95 F break a floor that holds on a cool day with cool water;
   * common practice, no source.
   */
  @Test
  void heatBreaksAFloorThatHoldsOnACoolDay() {
    JsonNode cool = plan(sample(COOL, COOL, COOL_WATER, 4, 2));
    JsonNode hot = plan(sample(HOT, HOT, HOT, 4, 2));
    assertEquals("holds", verdict(cool));
    assertEquals("breaks", verdict(hot));
    assertTrue(
        number(hot, "/mix/healingTime") < 0.7 * number(cool, "/mix/healingTime"),
        "healing time " + number(hot, "/mix/healingTime"));
    assertTrue(number(hot, "/mix/mixTemperature") > HOT, "stirring warms, too");
  }

  @Test
  void hotterIsNeverBetter() {
    for (int people : new int[] {3, 4}) {
      int last = VERDICTS.size() - 1;
      for (double heat = 50; heat <= 100; heat += 10) {
        JsonNode plan = plan(sample(heat, heat, heat, people, 2));
        int now = VERDICTS.indexOf(verdict(plan));
        assertTrue(now <= last, people + " people at " + heat + " F: " + verdict(plan));
        last = now;
      }
      assertEquals(0, last, "the hottest day is too hot for " + people);
    }
  }

  @Test
  void morePeopleNeverWorsenTheVerdict() {
    for (int mixers = 1; mixers <= 2; mixers++) {
      int last = 0;
      for (int people = 1; people <= 7; people++) {
        last = notWorse(last, people, mixers);
      }
    }
  }

  @Test
  void moreMixersNeverWorsenTheVerdict() {
    for (int people = 2; people <= 8; people += 2) {
      int last = 0;
      for (int mixers = 1; mixers <= 4; mixers++) {
        last = notWorse(last, people, mixers);
      }
    }
    assertEquals("breaks", verdict(plan(sample(75, 75, 65, 2, 1))));
    assertEquals("holds", verdict(plan(sample(75, 75, 65, 8, 4))));
  }

  private static int notWorse(int last, int people, int mixers) {
    String verdict = verdict(plan(sample(75, 75, 65, people, mixers)));
    int now = VERDICTS.indexOf(verdict);
    assertTrue(now >= last, people + " people, " + mixers + " mixers: " + verdict);
    return now;
  }

  /** Whoever does what a change says gets what it promises. */
  @Test
  void changesKeepTheirPromise() {
    TreeSet<String> kept = new TreeSet<>();
    for (double heat : new double[] {60, 75, 85}) {
      for (int people = 2; people <= 6; people += 2) {
        for (int mixers = 1; mixers <= 2; mixers++) {
          ObjectNode request = sample(heat, heat, heat, people, mixers);
          JsonNode plan = plan(request);
          for (JsonNode change : plan.at("/pour/changes")) {
            String code = change.get("code").asText();
            if (code.equals("dam")) {
              continue; // it cannot be told in a request
            }
            JsonNode then = plan(changed(request, change, plan));
            String who = code + " with " + people + " and " + mixers + " at " + heat + " F";
            assertEquals(change.get("verdict").asText(), verdict(then), who);
            kept.add(code);
          }
        }
      }
    }
    assertTrue(kept.size() >= 4, "tried only " + kept);
    assertTrue(
        kept.stream().anyMatch(code -> code.startsWith("cooler-water")), "tried only " + kept);
  }

  private static ObjectNode changed(ObjectNode request, JsonNode change, JsonNode plan) {
    ObjectNode changed = request.deepCopy();
    ObjectNode crew = (ObjectNode) changed.get("crew");
    String code = change.get("code").asText();
    ToldCrew.put(change, crew);
    switch (code.replace("-and-crew", "")) {
      case "barrels-filled-ahead" -> crew.put("preFilled", crew.get("barrels").intValue());
      case "shade-or-night" -> {
        ObjectNode day = (ObjectNode) changed.get("conditions");
        day.put("floor", day.get("air").doubleValue());
      }
      case "slower-material" -> changed.putObject("material").put("id", named(change));
      case "cooler-water" ->
          ((ObjectNode) changed.get("conditions"))
              .put("water", number(plan, "/mix/needed/waterTemperature"));
      case "one-more-person" -> more(crew, 1, 0);
      case "one-more-mixer" -> more(crew, 0, 1);
      case "one-more-person-and-mixer" -> more(crew, 1, 1);
      case "two-more-people-and-mixer" -> more(crew, 2, 1);
      case "two-bags-per-batch" -> crew.put("bagsPerBatch", 2);
      default -> throw new IllegalArgumentException(code);
    }
    return changed;
  }

  private static String named(JsonNode change) {
    return Catalogue.sheets().stream()
        .flatMap(sheet -> sheet.id().stream())
        .filter(id -> change.get("text").asText().contains(id + " "))
        .findFirst()
        .orElseThrow();
  }

  /** Each mixer comes with two barrels. */
  private static void more(ObjectNode crew, int people, int mixers) {
    crew.put("people", crew.get("people").intValue() + people);
    crew.put("mixers", crew.get("mixers").intValue() + mixers);
    crew.put("barrels", crew.get("barrels").intValue() + 2 * mixers);
  }

  // --- how

  /** The sample floor, on coarse cells, on a day of these degrees Fahrenheit. */
  private static ObjectNode sample(double air, double bags, double water, int people, int mixers) {
    ObjectNode sample = RunningService.example("sample-us.json");
    ((ObjectNode) sample.get("conditions"))
        .put("air", air)
        .put("powder", bags)
        .put("water", water)
        .remove("floor");
    sample.putObject("grid").put("cell", 0.75);
    sample
        .putObject("crew")
        .put("people", people)
        .put("mixers", mixers)
        .put("barrels", 2 * mixers)
        .put("bagsPerBatch", 1);
    return sample;
  }

  private static String verdict(JsonNode plan) {
    String verdict = plan.at("/pour/verdict").asText();
    assertTrue(VERDICTS.contains(verdict), verdict);
    return verdict;
  }

  private static double number(JsonNode plan, String place) {
    assertTrue(plan.at(place).isNumber(), place);
    return plan.at(place).doubleValue();
  }

  private static JsonNode plan(ObjectNode request) {
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
