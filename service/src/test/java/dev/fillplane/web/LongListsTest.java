package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The fast check of long lists finds what the general validator finds, at the same places. */
class LongListsTest {

  private static final int LENGTH = LongLists.LONG + 50;
  private static final int ROUNDS = 25;

  private static final SchemaGate GATE =
      new SchemaGate(RunningService.CONTRACT, List.of("PlanRequest", "ElevationsRequest"));
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** What a property may be that it should not; some are right for some properties. */
  private static final List<JsonNode> ODD =
      List.of(
          NODES.textNode("1.5"),
          NODES.textNode(""),
          NODES.textNode("x".repeat(80)),
          NODES.textNode("x".repeat(81)),
          NODES.textNode("\uD83D\uDE00".repeat(80)),
          NODES.textNode("two\nlines"),
          NODES.textNode("end\n"),
          NODES.textNode("\u0085"),
          NODES.numberNode(3),
          NODES.numberNode(-1.25e15),
          NODES.booleanNode(true),
          NODES.nullNode(),
          NODES.objectNode(),
          NODES.arrayNode().add(1));

  @Test
  void readings() {
    compareMutated(
        "{'setups':[{'id':'A','readings':[]},{'id':'B','readings':[]}]}",
        List.of("/setups/0/readings", "/setups/1/readings"),
        List.of("point", "x", "y", "reading", "elevation", "a/b~c"));
  }

  @Test
  void elevations() {
    compareMutated(
        "{'elevations':[]}",
        List.of("/elevations"),
        List.of("point", "x", "y", "elevation", "reading", "~1"));
  }

  @Test
  void tableValues() {
    Set<String> codes = new TreeSet<>();
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      ObjectNode survey = Trees.of("{'table':{'columns':['x','y','reading'],'values':[]}}");
      ArrayNode values = (ArrayNode) survey.at("/table/values");
      for (int i = 0; i < LENGTH; i++) {
        values.add(random.nextDouble());
      }
      for (int i = random.nextInt(6); i >= 0; i--) {
        values.set(random.nextInt(8), odd(random));
        values.set(random.nextInt(LENGTH), odd(random));
      }
      codes.addAll(compare(survey));
    }
    assertEquals(Set.of("wrong-type"), codes);
  }

  @Test
  void goodListsHaveNoFault() {
    ObjectNode survey = Trees.of("{'setups':[{'id':'A','readings':[]}]}");
    fill((ArrayNode) survey.at("/setups/0/readings"), List.of("point", "reading"));
    assertEquals(Set.of(), compare(survey));
    ObjectNode table = Trees.of("{'table':{'columns':['x','y','reading'],'values':[]}}");
    for (int i = 0; i < LENGTH; i++) {
      ((ArrayNode) table.at("/table/values")).add(i);
    }
    assertEquals(Set.of(), compare(table));
  }

  @Test
  void longTableIsAnswered() {
    ObjectNode request = RunningService.example("table.json");
    ArrayNode values = ((ArrayNode) request.at("/survey/table/values")).removeAll();
    for (int i = 0; i < 400; i++) {
      int row = i / 20;
      int column = i % 20;
      values.add(0.2 * column).add(0.15 * row).add(-5 - 0.25 * column);
    }
    assertTrue(values.size() > LongLists.LONG);
    Response answer =
        RunningService.post("/v1/elevations", request.without(List.of("rooms", "reference")));
    assertEquals(200, answer.statusCode(), answer.asString());
    assertEquals(400, answer.<List<Object>>path("elevations.points").size());
  }

  @Test
  void surveysOfAWrongShape() {
    for (String odd :
        List.of(
            "{'setups':3,'elevations':[]}",
            "{'setups':[7,{'id':'A'}],'elevations':[]}",
            "{'table':3,'elevations':[]}",
            "{'table':{'values':3},'elevations':[]}",
            "{'setups':{'readings':[]},'elevations':[]}")) {
      ObjectNode survey = Trees.of(odd);
      fill((ArrayNode) survey.get("elevations"), List.of("point", "x", "y", "elevation"));
      assertFalse(compare(survey).isEmpty(), odd);
    }
  }

  /** Breaks a few elements of each list in each round. */
  private static void compareMutated(String survey, List<String> lists, List<String> names) {
    Set<String> codes = new TreeSet<>();
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      ObjectNode mutated = Trees.of(survey);
      for (String place : lists) {
        ArrayNode list = (ArrayNode) mutated.at(place);
        fill(list, names.subList(0, 4));
        for (int i = random.nextInt(8); i >= 0; i--) {
          mutate(list, random.nextInt(5), names, random);
          mutate(list, random.nextInt(LENGTH), names, random);
        }
      }
      codes.addAll(compare(mutated));
    }
    assertEquals(Set.of("bad-text", "missing", "unknown-property", "wrong-type"), codes);
  }

  private static void fill(ArrayNode list, List<String> names) {
    for (int i = 0; i < LENGTH; i++) {
      ObjectNode element = list.addObject();
      for (String name : names) {
        if (name.equals("point")) {
          element.put(name, "p" + i);
        } else {
          element.put(name, 0.25 * i);
        }
      }
    }
  }

  private static JsonNode odd(Random random) {
    return ODD.get(random.nextInt(ODD.size())).deepCopy();
  }

  private static void mutate(ArrayNode list, int index, List<String> names, Random random) {
    JsonNode odd = odd(random);
    if (random.nextInt(6) == 0 || !list.get(index).isObject()) {
      list.set(index, odd);
    } else if (random.nextInt(4) == 0) {
      ((ObjectNode) list.get(index)).remove(names.get(random.nextInt(names.size())));
    } else {
      ((ObjectNode) list.get(index)).set(names.get(random.nextInt(names.size())), odd);
    }
  }

  /** The codes that were found by both. */
  private static Set<String> compare(ObjectNode survey) {
    Set<String> codes = new TreeSet<>();
    for (String schema : List.of("PlanRequest", "ElevationsRequest")) {
      ObjectNode body = Trees.of("{'units':'metric'}");
      body.set("survey", survey);
      if (schema.equals("PlanRequest")) {
        body.set("rooms", RunningService.sample().get("rooms"));
      }
      JsonNode before = body.deepCopy();
      List<Problem.Fault> fast = GATE.faults(schema, body);
      assertEquals(before, body, "the body is left as it was");
      assertEquals(faults(GATE.faultsOfAll(schema, body)), faults(fast));
      fast.forEach(fault -> codes.add(fault.code()));
    }
    return codes;
  }

  private static Set<String> faults(List<Problem.Fault> errors) {
    return errors.stream()
        .map(error -> error.code() + " " + error.pointer())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void tooLongLists() {
    int limit =
        RunningService.CONTRACT.schema("Setup").at("/properties/readings/maxItems").intValue();
    assertTrue(limit > LongLists.LONG);
    ObjectNode survey = Trees.of("{'setups':[{'id':'A','readings':[]}]}");
    ArrayNode readings = (ArrayNode) survey.at("/setups/0/readings");
    ObjectNode reading = Trees.of("{'point':'p','reading':1}");
    for (int i = 0; i <= limit; i++) {
      readings.add(reading);
    }
    ObjectNode body = Trees.of("{'units':'metric'}");
    body.set("survey", survey);
    assertEquals(
        Set.of("too-many #/survey/setups/0/readings"),
        faults(GATE.faults("ElevationsRequest", body)));
  }
}
