package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The place that a plan tells, read in the next plan. */
class NextReadingsPlanTest {

  /** Quantile of the normal distribution at 0.9. */
  private static final double QUANTILE = 1.2815515655446004;

  /**
   * Bags from the odds of the volume before and after, by the formula in words: spread of survey,
   * placing (0.5 mm over the floor) and yield (3 %), with 3 % of waste, from bags of 15 L of which
   * 1.5 % stay in the barrel. The odds are of 200 draws, so that they tell a spread to about 5 %.
   */
  @Test
  void readingThePlaceSavesTheBagsThatWereTold() {
    ObjectNode request = request();
    JsonNode before = plan(request);
    JsonNode next = before.at("/surface/nextReadings/0");
    JsonNode after = plan(with(request, next.get("x").doubleValue(), next.get("y").doubleValue()));
    double saved = reserve(before) - reserve(after);
    assertTrue(saved > 0.5, "saved " + saved);
    assertEquals(saved, next.get("saves").doubleValue(), 0.2 * saved);
  }

  @Test
  void randomPlacesSaveLess() {
    ObjectNode request = request();
    JsonNode next = plan(request).at("/surface/nextReadings/0");
    double best =
        spread(plan(with(request, next.get("x").doubleValue(), next.get("y").doubleValue())));
    Random random = new Random(2);
    double mean = 0;
    for (int i = 0; i < 8; i++) {
      double x = 0.2 + 8.6 * random.nextDouble();
      double y = 0.2 + 6.6 * random.nextDouble();
      mean += spread(plan(with(request, x, y))) / 8;
    }
    assertTrue(best < 0.9 * mean, best + " of " + mean);
  }

  @Test
  void placesAreOrderedByWhatTheySave() {
    ObjectNode request = request();
    ((ObjectNode) request.get("surface")).put("nextReadings", 6);
    double before = Double.POSITIVE_INFINITY;
    for (JsonNode next : plan(request).at("/surface/nextReadings")) {
      assertTrue(next.get("saves").doubleValue() <= before * 1.001);
      before = next.get("saves").doubleValue();
    }
  }

  private static double reserve(JsonNode plan) {
    double survey = spread(plan) / (2 * QUANTILE);
    double area = plan.at("/depth/pouredArea").doubleValue();
    double placed = plan.at("/depth/volume").doubleValue() + area * 0.9;
    double all = Math.sqrt(survey * survey + Math.pow(0.5 * area, 2) + Math.pow(0.03 * placed, 2));
    return QUANTILE * all * 1.03 / (15 * 0.985);
  }

  /** Between p10 and p90, litres. */
  private static double spread(JsonNode plan) {
    return plan.at("/depth/volumeOdds/p90").doubleValue()
        - plan.at("/depth/volumeOdds/p10").doubleValue();
  }

  /** A 9 x 7 m room with readings in its west only, under a target well above all of it. */
  private static ObjectNode request() {
    ObjectNode request =
        Trees.of(
            "{'units':'metric','rooms':[{'id':'hall','outline':{'type':'Polygon','coordinates':"
                + "[[[0,0],[9,0],[9,7],[0,7],[0,0]]]}}],'survey':{'elevations':[]},"
                + "'surface':{'drift':'linear','variogram':{'shape':'exponential','nugget':1,"
                + "'sill':25,'range':3}},'target':{'shape':'given','elevation':60},"
                + "'material':{'id':'cement-standard-25'}}");
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 4; j++) {
        add(request, 0.3 + 1.6 * i, 0.5 + 2 * j, 3 * Math.sin(2.0 * i + 3.0 * j));
      }
    }
    return request;
  }

  /** The same with a reading more, of what the surface says there. */
  private static ObjectNode with(ObjectNode request, double x, double y) {
    ObjectNode asked = request.deepCopy();
    asked.set("probes", Trees.of("{'a':[{'id':'p','x':" + x + ",'y':" + y + "}]}").get("a"));
    ObjectNode more = request.deepCopy();
    add(more, x, y, plan(asked).at("/depth/probes/0/elevation").doubleValue());
    return more;
  }

  private static void add(ObjectNode request, double x, double y, double elevation) {
    ArrayNode list = (ArrayNode) request.at("/survey/elevations");
    list.addObject()
        .put("point", "" + list.size())
        .put("x", x)
        .put("y", y)
        .put("elevation", elevation);
  }

  private static JsonNode plan(JsonNode request) {
    Response answer = RunningService.post("/v1/depth-fields", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
