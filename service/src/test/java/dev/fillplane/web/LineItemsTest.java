package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines add up to the plan that they are made from. */
class LineItemsTest {

  /** Half of the last digit of a line, and of the digits of the wire. */
  private static final double STEP = 0.01 + 1e-9;

  private static final String DEEP =
      "{'plan':{'target':{'minimumDepth':35},'crew':{'people':4,'mixers':2}}}";
  private static final String DAMP =
      "{'plan':{'conditions':{'air':20,'slab':{'humidity':0.9,'limit':0.75,'barrier':true}}}}";
  private static final String PUMPED = "{'plan':{'crew':{'placing':'pump','people':4}}}";
  private static final String GROUND =
      "{'plan':{'target':{'grind':{'allowed':true,'maximumDepth':5}}}}";

  private static JsonNode plan(ObjectNode request) {
    return Trees.of(RunningService.post("/v1/plans", request.get("plan")));
  }

  private static double at(JsonNode plan, String pointer) {
    return plan.at(pointer).doubleValue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sample-metric.json",
        "sample-us.json",
        "rectangle.json",
        "features.json",
        "premises.json",
        "grinding.json"
      })
  void everyBasisIsAPlaceOfThePlan(String example) {
    everyBasisResolves(Estimated.request(example, "{}"));
  }

  @Test
  void everyBasisOfOtherJobsIsAPlaceOfThePlan() {
    Set<String> codes = new TreeSet<>();
    codes.addAll(everyBasisResolves(Estimated.request("rectangle.json", DEEP)));
    codes.addAll(everyBasisResolves(Estimated.request("rectangle.json", DAMP)));
    codes.addAll(everyBasisResolves(Estimated.request("sample-metric.json", PUMPED)));
    codes.addAll(everyBasisResolves(Estimated.request("grinding.json", "{}")));
    codes.addAll(everyBasisResolves(Estimated.request("features.json", "{}")));
    assertTrue(
        codes.containsAll(
            List.of(
                "moisture-barrier", "pump", "grinding-blade", "crack-filler", "foam", "box-out")),
        codes.toString());
  }

  private static List<String> everyBasisResolves(ObjectNode request) {
    JsonNode plan = plan(request);
    Estimated estimate = Estimated.of(request);
    for (JsonNode line : estimate.lines()) {
      String basis = line.get("basis").textValue();
      assertTrue(basis.startsWith("#/"), basis);
      assertFalse(plan.at(basis.substring(1)).isMissingNode(), line.toString());
    }
    return estimate.codes();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sample-metric.json", "sample-us.json", "rectangle.json"})
  void materialsAreThoseOfThePlan(String example) {
    ObjectNode request = Estimated.request(example, "{}");
    JsonNode plan = plan(request);
    Estimated estimate = Estimated.of(request);
    double inFloor = estimate.number("underlayment", "quantity");
    double lost = estimate.number("underlayment", "waste");
    double reserve = estimate.number("underlayment", "reserve");
    assertEquals(at(plan, "/quantities/bags/likely"), inFloor + lost);
    assertEquals(at(plan, "/quantities/bags/order"), inFloor + lost + reserve);
    assertEquals(at(plan, "/quantities/bags/order"), estimate.number("underlayment", "order"));
    near(at(plan, "/quantities/primer/liquid"), estimate.quantity("primer"));
    near(at(plan, "/quantities/mixWater"), estimate.quantity("mix-water"));
    near(at(plan, "/quantities/perimeterSeal"), estimate.quantity("perimeter-strip"));
    near(0.05 * at(plan, "/quantities/perimeterSeal"), estimate.number("perimeter-strip", "waste"));
    assertEquals(plan.get("pins").size(), estimate.number("depth-pin", "order"));
  }

  /** Rounded up, by less than a step. */
  private static void near(double wanted, double told) {
    assertTrue(told >= wanted - 1e-9 && told < wanted + STEP, wanted + " is told as " + told);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sample-metric.json", "sample-us.json", "features.json"})
  void hoursAtThePourAreThoseOfItsRun(String example) {
    ObjectNode request = Estimated.request(example, "{}");
    JsonNode pour = plan(request).get("pour");
    Estimated estimate = Estimated.of(request);
    double busy = 0;
    for (JsonNode worker : pour.get("workers")) {
      busy += worker.get("busy").doubleValue() / 60;
    }
    double lines =
        estimate.hours(
            "labour-mixing",
            "labour-pouring",
            "labour-raking",
            "labour-rolling",
            "labour-measuring",
            "labour-cleaning");
    assertEquals(busy, lines, 6 * STEP);
    double end = at(pour, "/totals/end") / 60 * pour.get("workers").size();
    assertEquals(end, lines + estimate.hours("labour-waiting"), 7 * STEP);
  }

  /** 12 m2, 13.1 m of edge, one coat, three people; worked out by hand. */
  @Test
  void otherHoursAreByTheirRates() {
    Estimated usual = Estimated.of("rectangle.json", "{}");
    assertEquals(0.40, usual.quantity("labour-blasting"));
    assertEquals(0.15, usual.quantity("labour-priming"));
    assertEquals(0.53, usual.quantity("labour-sealing"));
    assertEquals(0.22, usual.quantity("labour-masking"));
    assertEquals(1, usual.quantity("labour-set-up"));
    Estimated told =
        Estimated.of(
            "rectangle.json",
            "{'rates':{'blast':10,'prime':24,'seal':13.1,'mask':26.2,'setUp':30,'returnVisit':90}}");
    assertEquals(1.2, told.quantity("labour-blasting"));
    assertEquals(0.5, told.quantity("labour-priming"));
    assertEquals(1, told.quantity("labour-sealing"));
    assertEquals(0.5, told.quantity("labour-masking"));
    assertEquals(0.5, told.quantity("labour-set-up"));
    assertEquals(1.5, told.quantity("labour-return"));
  }

  /**
   * 9 likely bags of 10: 9 * 0.985 / 1.03 = 8.6 get into the floor; of 300 kg of mix for 10 bags 1
   * - 0.985 / 1.03 of nine tenths is lost. A bead of 50 mm2 on 13.1 m of edge, 3.6 kg of dust.
   */
  @Test
  void wasteAndConsumablesOfTheRectangle() {
    Estimated estimate = Estimated.of("rectangle.json", "{}");
    assertEquals(9, estimate.quantity("underlayment"));
    assertEquals(0, estimate.number("underlayment", "waste"));
    assertEquals(1, estimate.number("underlayment", "reserve"));
    assertEquals(11.8, estimate.quantity("waste-mix"));
    assertEquals(10, estimate.quantity("empty-bags"));
    assertEquals(60, estimate.quantity("wash-water"));
    assertEquals(0.66, estimate.quantity("sealant"));
    assertEquals(0.07, estimate.number("sealant", "waste"));
    assertEquals(1.31, estimate.number("masking-tape", "waste"));
    assertEquals(0.99, estimate.number("dam-board", "order"));
    assertEquals(1, estimate.quantity("primer-roller"));
    assertEquals(1, estimate.quantity("dust-bag"));
    Estimated sample = Estimated.of("sample-metric.json", "{}");
    assertEquals(54, sample.quantity("underlayment"));
    assertEquals(2, sample.number("underlayment", "waste"));
    assertEquals(3, sample.number("underlayment", "reserve"));
  }

  /** One visit of three people and one of one person: half a day each. */
  @Test
  void halfDaysArePaid() {
    Estimated estimate = Estimated.of("rectangle.json", "{}");
    assertEquals(16, hours(estimate), estimate.lines().size() * STEP);
    assertEquals(0.5, estimate.quantity("mixer"));
    assertEquals(1, estimate.quantity("barrel"));
    Estimated exact = Estimated.of("rectangle.json", "{'rates':{'halfDay':1}}");
    assertTrue(exact.hours("labour-half-days") < 4 * 1 / 60.0 + STEP);
    assertTrue(hours(exact) < 8, "hours: " + hours(exact));
  }

  private static double hours(Estimated estimate) {
    return estimate.answer().at("/totals/hours/value").doubleValue();
  }

  @Test
  void hoursInSumAreThoseOfTheLines() {
    Estimated estimate = Estimated.of("sample-us.json", "{}");
    double sum = 0;
    for (JsonNode line : estimate.lines()) {
      sum += line.get("kind").textValue().equals("labour") ? at(line, "/quantity/value") : 0;
    }
    assertEquals(sum, hours(estimate), 1e-9);
  }

  /** A barrier hardens for a day, and each layer waits for the one below. */
  @Test
  void returnVisitsAreThoseOfBarrierAndLayers() {
    Estimated damp = Estimated.of("rectangle.json", DAMP);
    assertEquals(12, damp.quantity("moisture-barrier"));
    assertEquals(0.6, damp.quantity("labour-barrier"));
    assertEquals(2, damp.quantity("labour-return"));
    assertEquals(2, damp.quantity("labour-set-up"));
    ObjectNode request = Estimated.request("rectangle.json", DEEP);
    int layers = plan(request).at("/quantities/lifts").size();
    assertEquals(2, layers);
    Estimated deep = Estimated.of(request);
    assertEquals(layers, deep.quantity("labour-return"));
    assertEquals(layers, deep.quantity("labour-set-up"));
    assertEquals(2 * 2 * 0.5, deep.quantity("mixer"));
    assertEquals(2 * 4 * 30, deep.quantity("wash-water"));
  }

  @Test
  void aPumpStandsForMixersAndBarrels() {
    Estimated estimate = Estimated.of("sample-metric.json", PUMPED);
    assertTrue(estimate.quantity("pump") > 0);
    assertFalse(estimate.codes().contains("mixer"));
    assertFalse(estimate.codes().contains("barrel"));
    assertEquals(60, estimate.quantity("wash-water"));
  }

  @Test
  void grindingIsAsThePlanGrinds() {
    ObjectNode request = Estimated.request("grinding.json", "{}");
    double minutes = at(plan(request), "/grinding/minutes");
    Estimated estimate = Estimated.of(request);
    assertTrue(minutes > 0);
    near(minutes / 60, estimate.quantity("labour-grinding"));
    assertEquals("03 01 30", estimate.line("labour-grinding").get("reference").textValue());
    assertEquals(1, estimate.quantity("grinding-blade"));
  }

  @Test
  void codesAndReferencesAreHandedOut() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'codes':{'primer':'P 7','pump':'X'},'plan':{'material':{'id':'gypsum-standard-25'}}}");
    assertEquals("P 7", estimate.line("primer").get("ownCode").textValue());
    assertFalse(estimate.line("underlayment").has("ownCode"));
    assertEquals("03 54 13", estimate.line("underlayment").get("reference").textValue());
    assertTrue(estimate.line("underlayment").get("description").textValue().contains("gypsum"));
    assertEquals("09 05 61", estimate.line("perimeter-strip").get("reference").textValue());
  }

  /** The same job in feet and pounds is the same bags, hours and money. */
  @Test
  void bothSystemsTellTheSame() {
    String parts =
        "{'prices':{'currency':'USD','items':{'underlayment':{'price':'30','per':'{bag}'}}},"
            + "'hourlyRates':{'usual':'50'}}";
    Estimated metric = Estimated.of("sample-metric.json", parts);
    Estimated us = Estimated.of("sample-us.json", parts);
    assertEquals(metric.codes(), us.codes());
    assertEquals(metric.amount("underlayment"), us.amount("underlayment"));
    assertEquals(hours(metric), hours(us), 0.05);
    assertEquals(metric.quantity("perimeter-strip"), us.quantity("perimeter-strip") * 0.3048, 0.01);
    assertEquals("[ft_i]", us.line("perimeter-strip").at("/quantity/unit").textValue());
    assertEquals("m", metric.line("perimeter-strip").at("/quantity/unit").textValue());
  }

  @Test
  void nothingPouredIsNothingBought() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'plan':{'target':{'shape':'given','elevation':-50,'minimumDepth':0}},"
                + "'prices':{'currency':'EUR','items':{}}}");
    assertEquals(List.of(), estimate.codes());
    assertEquals("0.00", estimate.total());
    assertEquals(0, hours(estimate));
  }

  @Test
  void sameRequestSameAnswer() {
    ObjectNode request = RunningService.example("line-items.json");
    String once = Estimated.post(request).asString();
    assertEquals(once, Estimated.post(Trees.backwards(request)).asString());
  }
}
