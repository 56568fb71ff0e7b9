package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Wishes for a target over HTTP: what is refused, each at its place, and what is taken. */
class TargetWishesTest {

  private static Response wished(String target) {
    ObjectNode request = RunningService.sample();
    request.set("target", Refusals.tree(target));
    return RunningService.post("/v1/depth-fields", request);
  }

  private static void refused(String target, String code, String... pointers) {
    Response answer = wished(target);
    assertEquals(422, answer.statusCode(), answer::asString);
    assertEquals(List.of(pointers), answer.path("errors.pointer"));
    assertEquals(code, answer.path("errors[0].code"));
  }

  @Test
  void outOfRange() {
    refused("{'grind':{'maximumDepth':51}}", "out-of-range", "#/target/grind/maximumDepth");
    refused("{'grind':{'areaPerHour':0}}", "out-of-range", "#/target/grind/areaPerHour");
    refused("{'shape':'plane','maximumSlope':5.1}", "out-of-range", "#/target/maximumSlope");
    refused(
        "{'fixed':[{'x':1,'y':1,'elevation':1e9}]}", "out-of-range", "#/target/fixed/0/elevation");
    refused(
        "{'ceiling':[{'x':1,'y':1,'elevation':1e9}]}",
        "out-of-range",
        "#/target/ceiling/0/elevation");
  }

  @Test
  void againstTheContract() {
    refused("{'sharing':'two'}", "not-one-of", "#/target/sharing");
    refused("{'grind':{'maximumDepth':-1}}", "too-small", "#/target/grind/maximumDepth");
    refused("{'grind':{'depth':1}}", "unknown-property", "#/target/grind/depth");
  }

  @Test
  void heightsThatNoLevelMeets() {
    refused(
        "{'fixed':[{'x':1,'y':1,'elevation':40,'of':'pour'},"
            + "{'x':2,'y':1,'elevation':50,'of':'pour'}]}",
        "limits-fight",
        "#/target/fixed/0",
        "#/target/fixed/1");
  }

  @Test
  void grindingLowersTheTarget() {
    Response filled = wished("{'shape':'level','minimumDepth':3}");
    Response ground = wished("{'shape':'level','minimumDepth':3,'grind':{'allowed':true}}");
    assertEquals(200, ground.statusCode());
    assertNotEquals(
        filled.<Number>path("target.elevation").doubleValue(),
        ground.<Number>path("target.elevation").doubleValue());
  }
}
