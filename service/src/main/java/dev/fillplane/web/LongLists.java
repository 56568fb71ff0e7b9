package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.POJONode;
import dev.fillplane.finding.Place;
import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.TableValues;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Checks long lists of a survey in one loop, since the general validator is too slow for them. It
 * reads the schema of their elements and finds the same faults at the same places.
 */
final class LongLists {

  /** Lists longer than this are taken out. */
  static final int LONG = 1_000;

  private final FlatShape reading;
  private final FlatShape knownPoint;
  private final int maximumReadings;
  private final int maximumElevations;
  private final int maximumValues;

  /** First elements that stay for the general validator: as many as any of the lists wants. */
  private final int kept;

  private LongLists(Contract contract) {
    reading = FlatShape.of(contract, "Reading");
    knownPoint = FlatShape.of(contract, "KnownPoint");
    JsonNode readings = list(contract, "Setup", "readings");
    JsonNode elevations = list(contract, "Survey", "elevations");
    JsonNode values = list(contract, "Table", "values");
    maximumReadings = readings.path("maxItems").asInt();
    maximumElevations = elevations.path("maxItems").asInt();
    maximumValues = values.path("maxItems").asInt();
    kept = Stream.of(readings, elevations, values).mapToInt(LongLists::least).max().getAsInt();
  }

  static LongLists of(Contract contract) {
    return new LongLists(contract);
  }

  private static JsonNode list(Contract contract, String schema, String property) {
    return contract.schema(schema).path("properties").path(property);
  }

  private static int least(JsonNode list) {
    return Math.max(1, list.path("minItems").asInt());
  }

  /**
   * Checks the long lists of {@code body}.
   *
   * @return the body with each of them cut to its first elements, for the general validator
   */
  JsonNode takeOut(JsonNode body, List<Problem.Fault> faults) {
    JsonNode survey = body.path("survey");
    if (!hasLongList(survey)) {
      return body;
    }
    Place place = Place.root().at("survey");
    ObjectNode rest = ((ObjectNode) survey).objectNode().setAll((ObjectNode) survey);
    if (isLong(survey.path("elevations"))) {
      objects(
          survey.get("elevations"), knownPoint, maximumElevations, place.at("elevations"), faults);
      rest.set("elevations", cut(survey.get("elevations")));
    }
    JsonNode table = survey.path("table");
    if (table.path("values") instanceof POJONode values) {
      ArrayNode first = numbers(values, place.at("table").at("values"), faults);
      rest.set("table", with(table, "values", first));
    } else if (isLong(table.path("values"))) {
      numbers(table.get("values"), place.at("table").at("values"), faults);
      rest.set("table", with(table, "values", cut(table.get("values"))));
    }
    if (survey.path("setups").isArray()) {
      rest.set("setups", setups(survey.get("setups"), place.at("setups"), faults));
    }
    return with(body, "survey", rest);
  }

  private ArrayNode setups(JsonNode setups, Place place, List<Problem.Fault> faults) {
    ArrayNode rest = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < setups.size(); i++) {
      JsonNode readings = setups.get(i).path("readings");
      if (isLong(readings)) {
        objects(readings, reading, maximumReadings, place.at(i).at("readings"), faults);
        rest.add(with(setups.get(i), "readings", cut(readings)));
      } else {
        rest.add(setups.get(i));
      }
    }
    return rest;
  }

  private static boolean hasLongList(JsonNode survey) {
    List<JsonNode> lists = new ArrayList<>();
    lists.add(survey.path("elevations"));
    lists.add(survey.path("table").path("values"));
    survey.path("setups").forEach(setup -> lists.add(setup.path("readings")));
    return lists.stream().anyMatch(list -> list.isPojo() || isLong(list));
  }

  private static boolean isLong(JsonNode list) {
    return list.isArray() && list.size() > LONG;
  }

  private ArrayNode cut(JsonNode list) {
    ArrayNode first = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < kept; i++) {
      first.add(list.get(i));
    }
    return first;
  }

  /** A copy of an object with another value of one property. */
  static ObjectNode with(JsonNode object, String property, JsonNode value) {
    ObjectNode copy = JsonNodeFactory.instance.objectNode();
    copy.setAll((ObjectNode) object);
    copy.set(property, value);
    return copy;
  }

  private void objects(
      JsonNode list, FlatShape shape, int maximum, Place place, List<Problem.Fault> faults) {
    tooMany(list.size(), maximum, place, faults);
    for (int i = kept; i < list.size(); i++) {
      shape.check(list.get(i), place, i, faults);
    }
  }

  private void numbers(JsonNode list, Place place, List<Problem.Fault> faults) {
    tooMany(list.size(), maximumValues, place, faults);
    for (int i = kept; i < list.size(); i++) {
      number(list.get(i), place.at(i), faults);
    }
  }

  /**
   * Checks numbers that have no nodes.
   *
   * @return for the general validator: all of a few, else the first of them
   */
  private ArrayNode numbers(POJONode list, Place place, List<Problem.Fault> faults) {
    TableValues values = (TableValues) list.getPojo();
    boolean few = values.count() <= LONG;
    ArrayNode first = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < (few ? values.count() : kept); i++) {
      first.add(values.node(i));
    }
    if (!few) {
      tooMany(values.count(), maximumValues, place, faults);
      values.odd().tailMap(kept).forEach((i, odd) -> number(odd, place.at(i), faults));
    }
    return first;
  }

  private static void number(JsonNode element, Place place, List<Problem.Fault> faults) {
    if (!element.isNumber()) {
      faults.add(
          SchemaGate.fault(
              "type", place.toString(), "", JsonNodeFactory.instance.textNode("number")));
    }
  }

  private static void tooMany(int count, int maximum, Place place, List<Problem.Fault> faults) {
    if (count > maximum) {
      faults.add(
          SchemaGate.fault(
              "maxItems", place.toString(), "", JsonNodeFactory.instance.numberNode(maximum)));
    }
  }
}
