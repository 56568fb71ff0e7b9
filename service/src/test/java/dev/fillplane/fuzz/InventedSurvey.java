package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Random;

/** Tells known points as elevations, as readings of one or two setups, or as a table. */
record InventedSurvey(Random random) {

  /** Points that two setups share. */
  private static final int SHARED = 4;

  /** Height of a laser over the zero of the elevations, mm. */
  private static final double LASER = 1250;

  ObjectNode of(ArrayNode points) {
    return switch (random.nextInt(5)) {
      case 0 -> table(points);
      case 1 -> setups(points, points.size());
      case 2 -> setups(points, points.size() / 2);
      default -> elevations(points);
    };
  }

  private static ObjectNode survey() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ObjectNode elevations(ArrayNode points) {
    return survey().set("elevations", points);
  }

  private static ObjectNode table(ArrayNode points) {
    ObjectNode survey = survey();
    ObjectNode table = survey.putObject("table");
    table.putArray("columns").add("x").add("y").add("elevation");
    ArrayNode values = table.putArray("values");
    for (JsonNode point : points) {
      values.add(point.get("x")).add(point.get("y")).add(point.get("elevation"));
    }
    return survey;
  }

  private ObjectNode setups(ArrayNode points, int first) {
    ObjectNode survey = survey();
    setup(survey, "A", points, 0, Math.min(points.size(), first + SHARED), LASER);
    if (first < points.size()) {
      setup(survey, "B", points, first, points.size(), LASER + Chance.between(-200, 200, random));
    }
    survey.putArray("benchmarks").addObject().put("point", "p1").put("elevation", 0);
    return survey;
  }

  private static void setup(
      ObjectNode survey, String id, ArrayNode points, int from, int to, double laser) {
    ObjectNode setup = survey.withArray("setups").addObject().put("id", id);
    ArrayNode readings = setup.putArray("readings");
    for (int i = from; i < to; i++) {
      ObjectNode reading = points.get(i).deepCopy();
      double elevation = reading.remove("elevation").doubleValue();
      readings.add(reading.put("reading", Math.round(10 * (laser - elevation)) / 10.0));
    }
  }
}
