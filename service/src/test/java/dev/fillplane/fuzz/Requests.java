package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import java.util.stream.StreamSupport;

/**
 * Bodies that fit the schema of an operation: examples of the contract with their numbers changed a
 * little, invented floors with parts of such examples, or values made from the schema alone.
 */
final class Requests {

  private static final String PLAN = "PlanRequest";

  /** Parts of a plan request that stand on any floor. */
  private static final List<String> PARTS =
      List.of(
          "surface",
          "target",
          "material",
          "conditions",
          "crew",
          "equipment",
          "coveringThickness",
          "covering",
          "confidence",
          "seed",
          "premises");

  private final JsonNode document;
  private final List<ObjectNode> plans;

  /**
   * Requests of a contract.
   *
   * @param plans the plan requests that it shows
   */
  Requests(JsonNode document, List<ObjectNode> plans) {
    this.document = document;
    this.plans = plans;
  }

  /** A body for an operation; lines for one that takes lines. */
  JsonNode make(Operation operation, Random random) {
    if (operation.schema().equals(PLAN)) {
      return plan(random);
    }
    boolean shown = !operation.examples().isEmpty() && Chance.oneIn(2, random);
    JsonNode body =
        shown
            ? varied(Chance.of(operation.examples(), random), random)
            : new SchemaValues(document, random).of(operation.schema());
    return withFloors(body, random);
  }

  /** A plan request. */
  ObjectNode plan(Random random) {
    if (Chance.oneIn(4, random)) {
      return (ObjectNode) varied(Chance.of(plans, random), random);
    }
    ObjectNode plan = InventedFloors.make(random);
    for (String part : PARTS) {
      JsonNode shown = Chance.of(plans, random).path(part);
      if (Chance.oneIn(8, random)) {
        plan.set(part, new SchemaValues(document, random).of(schema(part)));
      } else if (!shown.isMissingNode() && !Chance.oneIn(3, random)) {
        plan.set(part, varied(shown, random));
      }
    }
    return plan;
  }

  /** A plan request of which all that is told can be told again in another way. */
  ObjectNode plainPlan(Random random) {
    ObjectNode plan = InventedFloors.make(random);
    for (String part : List.of("material", "conditions", "crew", "covering", "equipment")) {
      JsonNode shown = Chance.of(plans, random).path(part);
      if (!shown.isMissingNode() && random.nextBoolean()) {
        plan.set(part, varied(shown, random));
      }
    }
    return plan;
  }

  private JsonNode schema(String part) {
    return document.at("/components/schemas/" + PLAN + "/properties/" + part);
  }

  /** Floors that make sense in place of those that came from the schema alone. */
  private JsonNode withFloors(JsonNode body, Random random) {
    ObjectNode floor = InventedFloors.make(random);
    if (body.has("rooms") && body.has("survey")) {
      ((ObjectNode) body).set("survey", floor.get("survey"));
    } else if (body.has("survey")) {
      ((ObjectNode) body).set("survey", floor.get("survey"));
    }
    if (body.has("rooms")) {
      ((ObjectNode) body).set("rooms", floor.get("rooms"));
    }
    for (String place : List.of("base", "plan")) {
      if (body.has(place)) {
        ((ObjectNode) body).set(place, plan(random));
      }
    }
    if (body.has("plans")) {
      ArrayNode units = JsonNodeFactory.instance.arrayNode();
      units.add(plan(random).put("reference", "one")).add(plan(random).put("reference", "two"));
      ((ObjectNode) body).set("plans", units);
    }
    return body;
  }

  /** The same with some numbers a third more or less, and whole ones one more or less. */
  static JsonNode varied(JsonNode shown, Random random) {
    JsonNode copy = shown.deepCopy();
    double chance = random.nextDouble();
    return varied(copy, chance * chance, random);
  }

  private static JsonNode varied(JsonNode node, double chance, Random random) {
    if (node instanceof ObjectNode object) {
      object.properties().forEach(e -> e.setValue(varied(e.getValue(), chance, random)));
    } else if (node instanceof ArrayNode array && !isRing(array)) {
      for (int i = 0; i < array.size(); i++) {
        array.set(i, varied(array.get(i), chance, random));
      }
    } else if (node.isInt() && node.intValue() > 0 && random.nextDouble() < chance) {
      return JsonNodeFactory.instance.numberNode(
          Math.max(1, node.intValue() + random.nextInt(3) - 1));
    } else if (node.isNumber() && random.nextDouble() < chance) {
      return JsonNodeFactory.instance.numberNode(
          node.doubleValue() * Chance.between(0.7, 1.4, random));
    }
    return node;
  }

  /** Rings stay closed. */
  private static boolean isRing(ArrayNode array) {
    return array.size() > 3
        && StreamSupport.stream(array.spliterator(), false).allMatch(JsonNode::isArray);
  }
}
