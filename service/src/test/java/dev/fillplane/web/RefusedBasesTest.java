package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bases that must not be poured on, told for the place or for a room (common practice). */
class RefusedBasesTest {

  private final ObjectNode request = RunningService.sample();

  private ObjectNode room(int index) {
    return (ObjectNode) request.at("/rooms/" + index);
  }

  private void base(int index, String kinds) {
    room(index).set("base", Refusals.tree(kinds));
  }

  private void premises(String told) {
    request.set("premises", Refusals.tree(told));
  }

  @Test
  void aRoomIsPointedAt() {
    base(1, "['weak','magnesite']");
    assertRefused("base-magnesite", "#/rooms/1/base/1");
    base(1, "['bouncy']");
    assertRefused("base-bouncy", "#/rooms/1/base/0");
  }

  /** A room that tells its own base is not as the premises; where all do, nobody is. */
  @Test
  void whatARoomTellsStandsInPlaceOfThePremises() {
    premises("{'base':['magnesite']}");
    base(0, "[]");
    assertRefused("base-magnesite", "#/premises/base/0");
    base(1, "[]");
    base(2, "[]");
    answered();
  }

  @Test
  void onInsulationThePourIsThick() {
    request.remove("target");
    base(1, "['insulation']");
    Response plan = answered();
    assertTrue(plan.<Float>path("depth.minimum") > 19.999);
    assertTold(plan, "insulation-base", "#/rooms/1");
    assertEquals(
        List.of("store"), plan.path("safety.find { it.code == 'base-on-insulation' }.rooms"));
    target("minimumDepth", 19.9);
    assertRefused("minimum-below-insulation", "#/target/minimumDepth");
    target("minimumDepth", 20);
    answered();
  }

  /** A target that is given may come too near to the floor. */
  @Test
  void aGivenTargetIsHeldAgainstInsulationToo() {
    request.remove("target");
    Response free = answered();
    float highest = free.path("depth.highest.elevation");
    base(0, "['insulation']");
    base(1, "['insulation']");
    base(2, "['insulation']");
    target("elevation", highest + 19.0);
    List<String> pointers = assertRefused("thin-on-insulation", null);
    assertTrue(pointers.stream().allMatch(pointer -> pointer.startsWith("#/rooms/")));
    target("elevation", highest + 20.5);
    answered();
  }

  @Test
  void cementOnGypsumNeedsAPrimerThatIsolates() {
    room(0).put("substrate", "gypsum");
    assertTold(answered(), "cement-on-gypsum", "#/rooms/0/substrate");
    premises("{'isolatingPrimer':false}");
    assertRefused("gypsum-not-isolated", "#/rooms/0/substrate");
    request.putObject("material").put("id", "gypsum-standard-25");
    answered();
    request.remove("material");
    premises("{'isolatingPrimer':true}");
    List<String> codes = answered().path("warnings.code");
    assertFalse(codes.contains("cement-on-gypsum"));
  }

  @Test
  void aCrackThatMovesIsNoCrack() {
    feature("'crack','moving':true");
    assertRefused("crack-moves", "#/features/0/moving");
    feature("'crack','moving':false");
    List<String> codes = answered().path("warnings.code");
    assertFalse(codes.contains("crack-must-be-dormant"));
    feature("'crack'");
    assertTold(answered(), "crack-must-be-dormant", "#/features/0");
    feature("'moving-joint','moving':true");
    assertRefused("moving-of-no-crack", "#/features/0/moving");
  }

  @Test
  void whatIsUnknownIsAskedForRoomByRoom() {
    base(0, "[]");
    base(2, "[]");
    room(0).put("oldCovering", "none");
    String asked = answered().path("warnings.find { it.code == 'premises-not-told' }.detail");
    assertTrue(asked.contains("state of the base in store,"), asked);
    assertTrue(asked.contains("old covering in store, passage,"), asked);
  }

  private void target(String name, double value) {
    request.withObject("/target").put(name, value);
  }

  private void feature(String told) {
    request.set("features", Refusals.tree("[{'kind':" + told + ",'from':[0.5,1],'to':[1.5,1]}]"));
  }

  private static void assertTold(Response plan, String code, String pointer) {
    String found = plan.path("warnings.find { it.code == '" + code + "' }.pointer");
    assertEquals(pointer, found);
  }

  private List<String> assertRefused(String code, String pointer) {
    Response answer = RunningService.post(Refusals.PLANS, request);
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(
        List.of(code), answer.<List<String>>path("errors.code").stream().distinct().toList());
    List<String> pointers = answer.path("errors.pointer");
    assertTrue(pointer == null || pointers.equals(List.of(pointer)), pointers.toString());
    return pointers;
  }

  private Response answered() {
    Response answer = RunningService.post(Refusals.PLANS, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
