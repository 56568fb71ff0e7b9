package dev.fillplane.web;

import static dev.fillplane.web.Refusals.refused;
import static dev.fillplane.web.Refusals.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Air, slab, heat and times of a whole plan over HTTP, on the rectangle of 12 m2. */
class SlabAndAirPlanTest {

  private final ObjectNode floor = RunningService.example("rectangle.json");

  @Test
  void aDampSlabIsANoGoWithABarrier() {
    conditions("{'air':20,'humidity':0.5,'slab':{'humidity':0.9,'limit':0.85,'grade':'on'}}");
    JsonPath answer = answer();
    assertEquals("no-go", answer.getString("drying.moisture.verdict"));
    assertEquals(3, answer.getInt("drying.moisture.tests"));
    assertEquals(12, answer.getDouble("drying.moisture.barrier.area"), 1e-6);
    assertEquals(24 * 60, answer.getDouble("drying.moisture.barrier.hardening"), 1e-9);
    assertEquals(1, answer.getInt("drying.moisture.barrier.days"));
    assertEquals("#/conditions/slab/humidity", pointer(answer, "slab-too-damp"));
    assertNull(pointer(answer, "slab-moisture-unknown"));
  }

  @Test
  void aDrySlabGoesWithoutABarrier() {
    conditions("{'slab':{'humidity':0.7,'limit':0.75}}");
    JsonPath answer = answer();
    assertEquals("go", answer.getString("drying.moisture.verdict"));
    assertNull(answer.get("drying.moisture.barrier"));
    assertNull(pointer(answer, "slab-too-damp"));
  }

  @Test
  void onlyTheRoomsThatAreNotOfWoodAreTested() {
    ((ObjectNode) floor.at("/rooms/0")).put("substrate", "wood");
    conditions("{'slab':{'humidity':0.9}}");
    assertEquals(0, answer().getInt("drying.moisture.tests"));
    assertEquals(0, answer().getInt("drying.moistureTests"));
  }

  @Test
  void withoutAHumidityThereIsNoAirAndAWord() {
    conditions("{'air':20}");
    JsonPath answer = answer();
    assertNull(answer.get("drying.air"));
    assertEquals("#/conditions", pointer(answer, "humidity-unknown"));
    conditions("{'air':20,'humidity':0.5}");
    assertEquals("holds", answer().getString("drying.air.verdict"));
    assertNull(pointer(answer(), "humidity-unknown"));
  }

  @Test
  void aSecondTimeOfTheSheetChangesTheWorkingTime() {
    conditions("{'air':28,'floor':28,'powder':26,'water':20,'humidity':0.5}");
    floor.set("material", tree("{'id':'cement-standard-25'}"));
    double assumed = answer().getDouble("mix.workingTime");
    assertEquals("#/conditions", pointer(answer(), "time-is-an-estimate"));
    floor.set(
        "material",
        tree("{'id':'cement-standard-25','secondTime':{'workingTime':6,'workingTimeAt':30}}"));
    JsonPath answer = answer();
    assertTrue(answer.getDouble("mix.workingTime") < assumed - 1);
    assertNull(pointer(answer, "time-is-an-estimate"));
  }

  @Test
  void theFreshFloorIsShielded() {
    List<String> codes = answer().getList("drying.curing.code");
    assertFalse(codes.isEmpty());
    assertTrue(codes.contains("curing-no-sheeting"), codes.toString());
  }

  @Test
  void slipsAreRefused() {
    refusedConditions("humidity", "1.2", "too-big", "");
    refusedConditions("airspeed", "-1", "too-small", "");
    refusedConditions("mixingHeat", "5", "out-of-range", "");
    refusedConditions("slab", "{'humidity':75}", "too-big", "/humidity");
    refusedConditions("slab", "{'limit':1.1}", "too-big", "/limit");
    refusedConditions("slab", "{'age':-1}", "too-small", "/age");
    refusedConditions("slab", "{'grade':'under'}", "not-one-of", "/grade");
    refusedConditions("slab", "{'wet':true}", "unknown-property", "/wet");
  }

  @Test
  void timesOfASheetThatContradictAreRefused() {
    refusedMaterial(
        "'secondTime':{'workingTime':20,'workingTimeAt':30}", "times-contradict", "/secondTime");
    refusedMaterial("'activationEnergy':500", "out-of-range", "/activationEnergy");
    refusedMaterial("'activationEnergy':-40", "too-small", "/activationEnergy");
    refusedMaterial(
        "'activationEnergy':60,'secondTime':{'workingTime':10,'workingTimeAt':30}",
        "energy-contradicts-times",
        "/activationEnergy");
  }

  private static void refusedConditions(String name, String value, String code, String inner) {
    refused(
        sample -> ((ObjectNode) sample.get("conditions")).set(name, tree(value)),
        code,
        "#/conditions/" + name + inner);
  }

  private static void refusedMaterial(String values, String code, String inner) {
    refused(
        sample -> sample.set("material", tree("{'id':'cement-standard-25'," + values + "}")),
        code,
        "#/material" + inner);
  }

  private void conditions(String told) {
    floor.set("conditions", tree(told));
  }

  private JsonPath answer() {
    Response answer = RunningService.post(Refusals.PLANS, floor);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.jsonPath();
  }

  /** Where a warning points to; null where it is not told. */
  private static String pointer(JsonPath answer, String code) {
    List<Map<String, String>> warnings = answer.getList("warnings");
    return warnings.stream()
        .filter(warning -> warning.get("code").equals(code))
        .map(warning -> warning.get("pointer"))
        .findFirst()
        .orElse(null);
  }
}
