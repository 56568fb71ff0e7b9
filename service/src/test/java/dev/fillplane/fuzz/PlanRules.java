package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Metric;
import dev.fillplane.web.Trees;
import java.util.List;
import java.util.Random;

/** What must hold between two plans whose requests differ in a known way. */
enum PlanRules {
  ANOTHER_ORDER {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      ObjectNode other = request.deepCopy();
      Retold.shuffle(other.get("rooms"), random);
      Retold.shuffle(other.at("/survey/elevations"), random);
      Retold.shuffle(other.at("/survey/setups/0/readings"), random);
      Retold.ringsFromElsewhere(other, random);
      return Same.EXACTLY.broken(plans.of(request), plans.of(other));
    }
  },
  ANOTHER_PLACE {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      ObjectNode other = untabled(request).deepCopy();
      double angle = Chance.between(0, 6, random);
      double by = Chance.between(-900, 900, random);
      Retold.Move turn = Retold.turn(angle);
      Retold.Move move =
          switch (random.nextInt(3)) {
            case 0 -> turn;
            case 1 -> (x, y) -> new double[] {x + by, y - 2 * by};
            default -> (x, y) -> new double[] {-x, y};
          };
      Retold.move(other, move);
      return Same.BY_OTHER_CELLS.broken(plans.of(untabled(request)), plans.of(other));
    }
  },
  OTHER_UNITS {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      ObjectNode told = untabled(request);
      ObjectNode us = (ObjectNode) Metric.toUs("PlanRequest", told);
      JsonNode answer = Metric.of("Plan", plans.of(us.put("units", "us")));
      return Same.BY_ROUNDING.broken(plans.of(told), answer);
    }
  },
  HIGHER_UP {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      ObjectNode low = untabled(request);
      ObjectNode high = low.deepCopy();
      double by = Chance.between(-4000, 4000, random);
      Retold.raise(high, by);
      JsonNode from = plans.of(low);
      JsonNode to = plans.of(high);
      double rise = Plans.number(to, "/target/elevation") - Plans.number(from, "/target/elevation");
      String off =
          Math.abs(rise - by) > 1e-6 ? "the target rises by %s, not %s".formatted(rise, by) : "";
      return off + Same.BY_ROUNDING.brokenButForHeights(from, to);
    }
  },
  MORE_HANDS {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      ObjectNode few = request.deepCopy();
      ObjectNode crew = few.withObject("/crew");
      crew.put("people", 2 + random.nextInt(3)).put("mixers", 1).remove("ribbonWidth");
      ObjectNode many = few.deepCopy();
      ObjectNode more = many.withObject("/crew");
      more.put("people", crew.get("people").intValue() + 1 + random.nextInt(2));
      more.put("mixers", 1 + random.nextInt(2));
      List<String> worse = List.of("holds", "tight", "breaks");
      String before = plans.of(few).at("/pour/verdict").textValue();
      String after = plans.of(many).at("/pour/verdict").textValue();
      boolean worsened = worse.indexOf(after) > worse.indexOf(before);
      return worsened ? "more hands: from %s to %s".formatted(before, after) : "";
    }
  },
  SURER {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      double confidence = Chance.between(0.5, 0.9, random);
      double higher = Chance.between(confidence, 0.99, random);
      JsonNode sure = plans.of(request.deepCopy().put("confidence", confidence));
      JsonNode surer = plans.of(request.deepCopy().put("confidence", higher));
      return Plans.notLess("/quantities/bags/order", sure, surer);
    }
  },
  DEEPER {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      double depth = Chance.between(4, 12, random);
      ObjectNode shallow = request.deepCopy();
      shallow.putObject("target").put("minimumDepth", depth);
      ObjectNode deep = request.deepCopy();
      deep.putObject("target").put("minimumDepth", depth + Chance.between(0.1, 6, random));
      JsonNode less = plans.of(shallow);
      JsonNode more = plans.of(deep);
      return Plans.notLess("/depth/volume", less, more)
          + Plans.notLess("/depth/minimum", less, more)
          + Plans.notLess("/quantities/bags/likely", less, more)
          + Plans.notLess("/quantities/bags/order", less, more);
    }
  },
  ALONE {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      JsonNode plan = plans.of(request);
      JsonNode again = plans.of((ObjectNode) Trees.backwards(request));
      JsonNode streamed = plans.inStream(request);
      JsonNode field = plans.at("/v1/depth-fields", request);
      return (plan.equals(again) ? "" : "properties in another order make another plan. ")
          + (plan.equals(streamed) ? "" : "the plan in a stream is another. ")
          + (plan.get("depth").equals(field.get("depth")) ? "" : "the depth alone is another. ");
    }
  },
  VALIDATED {
    @Override
    String broken(Plans plans, ObjectNode request, Random random) {
      Mutation.of(request, random);
      return plans.validatedAsPlanned(request);
    }
  };

  /** What is broken; empty if the rule holds. */
  abstract String broken(Plans plans, ObjectNode request, Random random);

  /** The same floor, its table told as elevations. */
  static ObjectNode untabled(ObjectNode request) {
    JsonNode values = request.at("/survey/table/values");
    if (values.isMissingNode()) {
      return request;
    }
    ObjectNode told = request.deepCopy();
    told.putObject("survey").putArray("elevations");
    for (int i = 0; i < values.size(); i += 3) {
      OddFloor.reading(
          told,
          values.get(i).asDouble(),
          values.get(i + 1).asDouble(),
          values.get(i + 2).asDouble());
    }
    return told;
  }
}
