package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.material.Catalogue;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;

/** The wet pour bends the joists under it, and what fills the bow is in the order. */
class JoistBowTest {

  private final ObjectNode request = RunningService.sample();

  /**
   * Derived: 16/25 of span / 360 times the weight of a metre over 40 psf (1915.21 Pa), about 7 % of
   * what is poured over a span of 4 m.
   */
  @Test
  void theOrderGrowsByWhatTheBowTakes() {
    wood(0, 1, 2);
    Response stiff = answered();
    assertNull(stiff.path("quantities.bow"));
    span(4);
    Response bent = answered();
    double share = number(bent, "quantities.bow.share");
    double perMetre = Catalogue.usual().wetDensity() * 9.80665;
    assertEquals(0.64 * 4 / 360 * perMetre / 1915.21, share, 1e-4 * share);
    assertEquals(number(stiff, "depth.volume"), number(bent, "depth.volume"), 1e-4);
    assertEquals(share * number(bent, "depth.volume"), number(bent, "quantities.bow.volume"), 1e-4);
    int more = bags(bent) - bags(stiff);
    assertEquals(more, (int) bent.path("quantities.bow.bags"));
    assertEquals(share * bags(stiff), more, 1.0);
    assertTrue(more >= 3, "only " + more);
  }

  /** All else that hangs on the bags follows them. */
  @Test
  void waterMassAndBatchesFollow() {
    wood(0, 1, 2);
    Response stiff = answered();
    span(4);
    Response bent = answered();
    double ratio = (double) bags(bent) / bags(stiff);
    assertEquals(ratio, number(bent, "quantities.mass") / number(stiff, "quantities.mass"), 1e-9);
    int stiffBatches = stiff.path("pour.totals.batches");
    assertTrue((int) bent.path("pour.totals.batches") > stiffBatches);
    int level = stiff.path("options.find { it.name == 'level' }.bags");
    assertTrue((int) bent.path("options.find { it.name == 'level' }.bags") > level);
    String text = bent.path("safety.find { it.code == 'joist-sag' }.text");
    int told = bent.path("quantities.bow.bags");
    assertTrue(text.contains("fill the bow: " + told + ";"), text);
  }

  @Test
  void onlyWoodBends() {
    span(4);
    assertNull(answered().path("quantities.bow"));
    wood(1);
    double one = number(answered(), "quantities.bow.share");
    wood(0);
    assertTrue(number(answered(), "quantities.bow.share") > one);
  }

  private void wood(int... rooms) {
    for (int room : rooms) {
      ((ObjectNode) request.at("/rooms/" + room)).put("substrate", "wood");
    }
  }

  private void span(double metres) {
    request.withObject("/premises").put("joistSpan", metres);
  }

  private static int bags(Response plan) {
    return plan.path("quantities.bags.order");
  }

  private static double number(Response plan, String path) {
    return plan.jsonPath().getDouble(path);
  }

  private Response answered() {
    Response answer = RunningService.post(Refusals.PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
