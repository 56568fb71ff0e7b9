package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.plan.Term;
import dev.fillplane.plan.Terms;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.Trees;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Numbers at the ends of their ranges are in, those beyond are out; crews and jobs at their ends.
 */
class EndsOfRangesTest {

  private final FuzzedService service = FuzzedService.shared();

  @TestFactory
  Stream<DynamicTest> quantities() {
    return Terms.all().stream()
        .filter(term -> !term.path().equals("rooms"))
        .flatMap(
            term ->
                Stream.of(
                    DynamicTest.dynamicTest(term.path() + " least", () -> in(term, term.from())),
                    DynamicTest.dynamicTest(term.path() + " most", () -> in(term, term.to())),
                    DynamicTest.dynamicTest(term.path() + " beyond", () -> out(term))));
  }

  /** Answered, or refused for another reason than its range. */
  private void in(Term term, double si) {
    Reply reply = told(term, si);
    assertFalse(reply.text().contains("out-of-range"), reply.text());
  }

  private void out(Term term) {
    Reply reply = told(term, term.to() + Math.abs(term.to()) * 1e-6);
    assertEquals(422, reply.status(), reply.text());
    assertTrue(
        reply.text().contains("\"out-of-range\",\"pointer\":\"#/" + term.path() + "\""),
        reply.text());
  }

  private Reply told(Term term, double si) {
    ObjectNode request = OddFloor.room(Rings.polygon(Rings.box(0, 0, 6, 4)));
    String[] path = term.path().split("/", -1);
    ObjectNode part = request;
    for (int i = 0; i < path.length - 1; i++) {
      part = part.withObject("/" + path[i]);
    }
    if (term.path().contains("variogram")) {
      part.setAll(Trees.of("{'shape':'spherical','nugget':1,'sill':4,'range':4}"));
    }
    part.put(path[path.length - 1], term.dimension().unit(UnitSystem.METRIC).fromSi(si));
    return answer(request);
  }

  private Reply answer(ObjectNode request) {
    Operation plans = service.operation("/v1/plans");
    Reply reply = service.post(plans, Texts.of(request));
    assertEquals(Optional.empty(), service.broken(plans, request, reply));
    return reply;
  }

  @TestFactory
  Stream<DynamicTest> crewsAndJobs() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            with("one person", "{'crew':{'people':1}}"),
            with("fifty people, twenty mixers", "{'crew':{'people':50,'mixers':20,'barrels':100}}"),
            with("a hundred bags a batch", "{'crew':{'people':3,'bagsPerBatch':100}}"),
            with("one person, twenty mixers", "{'crew':{'people':1,'mixers':20}}"),
            with("no barrel to spare", "{'crew':{'people':8,'mixers':4,'barrels':1}}"),
            with("frost", "{'conditions':{'air':-30,'floor':-30,'powder':-30,'water':0}}"),
            with("heat", "{'conditions':{'air':60,'floor':80,'powder':80,'water':95}}"),
            with("storm in dry air", "{'conditions':{'air':60,'humidity':0,'airspeed':108}}"),
            with("steam", "{'conditions':{'air':60,'humidity':1}}"),
            with("half sure", "{'confidence':0.5}"),
            with("almost sure", "{'confidence':0.99,'seed':9007199254740991}"),
            with("coarse cells", "{'grid':{'cell':10}}"),
            with("no slope", "{'target':{'maximumSlope':0,'shape':'plane'}}"),
            with("a wall to a wall step", "{'surface':{'steps':[{'from':[0,0],'to':[6,4]}]}}"),
            with("steps of no length", "{'surface':{'steps':[{'from':[1,1],'to':[1,1]}]}}"),
            with("steps far away", "{'surface':{'steps':[{'from':[1e9,0],'to':[1e9,1]}]}}"),
            with("twenty steps in a fan", fan()),
            with(
                "probes anywhere",
                "{'probes':[{'id':'a','x':1e9,'y':-1e9},{'id':'b','x':0,'y':0}]}"),
            with("openings of no width", opening(2, 0, 2, 0)),
            with("opening off the wall", opening(2, 1, 3, 1)),
            with("opening round a corner", opening(5.5, 0, 6, 0.5)),
            with("opening 1e9 away", opening(1e9, 0, 1e9, 1)),
            with("feature far away", "{'features':[{'kind':'drain','at':[1e9,1e9],'width':100}]}"),
            with(
                "joint of no length",
                "{'features':[{'kind':'moving-joint','from':[3,1],'to':[3,1]}]}"),
            with(
                "joint along a wall",
                "{'features':[{'kind':'moving-joint','from':[0,0],'to':[6,0]}]}"),
            with(
                "joint far beyond",
                "{'features':[{'kind':'moving-joint','from':[-1e6,2],'to':[1e6,2]}]}")));
  }

  private static String fan() {
    StringBuilder steps = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      String end = "[6," + 0.2 * i + "]";
      steps.append(i == 0 ? "" : ",").append("{'from':[0,2],'to':").append(end).append('}');
    }
    return "{'surface':{'steps':[" + steps + "]}}";
  }

  private static String opening(double x1, double y1, double x2, double y2) {
    return "{'openings':[{'id':'o','kind':'exit','from':[%s,%s],'to':[%s,%s]}]}"
        .formatted(x1, y1, x2, y2);
  }

  /** The floor with a part of a request; nothing is said of the answer but that it is whole. */
  private static OddCase with(String name, String part) {
    ObjectNode request = OddFloor.room(Rings.polygon(Rings.box(0, 0, 6, 4)));
    for (var told : Trees.of(part).properties()) {
      JsonNode value = told.getValue();
      if (told.getKey().equals("openings")) {
        ((ObjectNode) request.at("/rooms/0")).set("openings", value);
      } else {
        request.set(told.getKey(), value);
      }
    }
    return OddCase.either(name, request);
  }
}
