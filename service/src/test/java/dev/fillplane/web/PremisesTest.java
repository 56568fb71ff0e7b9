package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What plans make of the premises, through the front door. */
class PremisesTest {

  private static final String ALL =
      "{'jurisdiction':'uk','oldCovering':'carpet','suspended':false,'deadLoadAllowance':5,"
          + "'heater':'none','solventPrimer':false,'flames':false,'floorHeating':'none','base':[],"
          + "'structure':[]}";

  @Test
  void whatIsNotToldIsAskedFor() {
    String warning = warning(planned("{}"));
    for (String name :
        List.of("country", "old covering", "state of the base", "structure", "heater", "heating")) {
      assertTrue(warning.contains(name), warning);
    }
    assertFalse(warning(planned("{'heater':'electric'}")).contains("heater"));
  }

  @Test
  void nothingIsAskedForWhereAllIsTold() {
    ObjectNode request = request(ALL.replace("}", ",'joistSpan':4}"));
    ((ObjectNode) request.get("conditions")).put("ventilated", true);
    List<String> codes = answered(request).path("warnings.code");
    assertFalse(codes.contains("premises-not-told"), codes.toString());
  }

  /** An allowance of 0.01 kPa is half a millimetre of pour. */
  @Test
  void notesOfThePlace() {
    Response plan =
        planned(
            "{'deadLoadAllowance':0.01,'heater':'unflued','solventPrimer':true,'flames':true,"
                + "'floorHeating':'off','base':['weak'],'structure':['moving-cracks']}");
    List<String> codes = plan.path("safety.code");
    for (String code :
        List.of(
            "added-load-over",
            "heater-unflued",
            "solvent-primer",
            "open-flames",
            "heated-floor",
            "engineer-moving-cracks",
            "base-weak")) {
      assertTrue(codes.contains(code), code + " in " + codes);
    }
    float limit = plan.path("safety.find { it.code == 'added-load-over' }.limit.value");
    assertEquals(0.01, limit, 1e-6);
  }

  /** Air of 30 C at 90 % has its dew point at 28.2 C (published table). */
  @Test
  void dampAir() {
    ObjectNode request = request("{}");
    ((ObjectNode) request.get("conditions")).put("air", 30).put("floor", 25).put("humidity", 0.9);
    Response plan = answered(request);
    assertTrue(plan.<List<String>>path("safety.code").contains("do-not-pour-near-dew-point"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'base':['weak','magnesite']} | base-magnesite | #/premises/base/1",
        "{'base':['bouncy']} | base-bouncy | #/premises/base/0",
        "{'floorHeating':'on'} | heated-floor-on | #/premises/floorHeating",
        "{'structure':['ghost']} | not-one-of | #/premises/structure/0",
        "{'sag':-1} | too-small | #/premises/sag",
        "{'sag':501} | out-of-range | #/premises/sag",
        "{'joistSpacing':40} | out-of-range | #/premises/joistSpacing",
        "{'base':['sand']} | not-one-of | #/premises/base/0",
        "{'deadLoadAllowance':-1} | too-small | #/premises/deadLoadAllowance",
        "{'deadLoadAllowance':51} | out-of-range | #/premises/deadLoadAllowance",
        "{'joistSpan':0} | too-small | #/premises/joistSpan",
        "{'joistSpan':4000} | out-of-range | #/premises/joistSpan",
        "{'heater':'stove'} | not-one-of | #/premises/heater",
        "{'jurisdiction':'mars'} | not-one-of | #/premises/jurisdiction",
        "{'flames':1} | wrong-type | #/premises/flames",
        "{'fire':true} | unknown-property | #/premises/fire"
      })
  void refuses(String premises, String code, String pointer) {
    Refusals.refused(sample -> sample.set("premises", Refusals.tree(premises)), code, pointer);
  }

  private static String warning(Response plan) {
    return plan.path("warnings.find { it.code == 'premises-not-told' }.detail");
  }

  private static Response planned(String premises) {
    return answered(request(premises));
  }

  private static ObjectNode request(String premises) {
    ObjectNode request = RunningService.sample();
    request.set("premises", Refusals.tree(premises));
    return request;
  }

  private static Response answered(ObjectNode request) {
    Response answer = RunningService.post(Refusals.PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
