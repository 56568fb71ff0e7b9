package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** A way to spoil one value of a request. */
enum Mutation {
  OTHER_TYPE {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.put(Chance.of(OTHERS, random).deepCopy());
    }
  },
  MISSING {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.remove();
    }
  },
  EXTRA {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      if (spot.parent() instanceof ObjectNode object) {
        object.set(Chance.of(HostileTexts.NAMES, random), spot.value().deepCopy());
      } else {
        ((ArrayNode) spot.parent()).add(spot.value().deepCopy());
      }
    }
  },
  ODD_NUMBER {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.put(Chance.of(NUMBERS, random));
    }
  },
  OTHER_NUMBER {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      double number = spot.value().asDouble(1) * Chance.ofMagnitude(-4, 5, random);
      spot.put(DoubleNode.valueOf(random.nextBoolean() ? number : -number));
    }
  },
  ODD_TEXT {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.put(NODES.textNode(Chance.of(HostileTexts.ALL, random)));
    }
  },
  LINE_END {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.put(NODES.textNode(spot.value().asText() + Chance.of(random, "\n", " ", "\u0000")));
    }
  },
  OTHER_UNITS {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      ((ObjectNode) body).put("units", Chance.of(random, "us", "us", "us", "imperial"));
    }
  },
  SHUFFLED {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      if (list(spot) instanceof ArrayNode list) {
        List<JsonNode> elements = new ArrayList<>();
        list.forEach(elements::add);
        Collections.shuffle(elements, random);
        list.removeAll().addAll(elements);
      }
    }
  },
  SWAPPED {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      if (list(spot) instanceof ArrayNode list && !list.isEmpty()) {
        int one = random.nextInt(list.size());
        int other = random.nextInt(list.size());
        JsonNode moved = list.get(one);
        list.set(one, list.get(other));
        list.set(other, moved);
      }
    }
  },
  REPEATED {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      if (list(spot) instanceof ArrayNode list && !list.isEmpty()) {
        JsonNode one = list.get(random.nextInt(list.size()));
        for (int i = Chance.of(random, 1, 1, 2, 60); i > 0; i--) {
          list.insert(random.nextInt(list.size()), one.deepCopy());
        }
      }
    }
  },
  EMPTIED {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      spot.put(spot.value().isArray() ? NODES.arrayNode() : NODES.objectNode());
    }
  },
  FROM_ELSEWHERE {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      JsonNode other = Spot.in(body, random).value().deepCopy();
      spot.put(other);
    }
  },
  DEEP {
    @Override
    void spoil(Spot spot, JsonNode body, Random random) {
      JsonNode deep = spot.value();
      for (int i = Chance.of(random, 2, 30, 39, 45, 900); i > 0; i--) {
        deep =
            random.nextBoolean() ? NODES.arrayNode().add(deep) : NODES.objectNode().set("a", deep);
      }
      spot.put(deep);
    }
  };

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final List<JsonNode> OTHERS =
      List.of(
          NODES.nullNode(),
          NODES.booleanNode(true),
          NODES.textNode(""),
          NODES.textNode("NaN"),
          NODES.textNode("-Infinity"),
          NODES.textNode("12"),
          NODES.numberNode(7),
          NODES.numberNode(0.5),
          NODES.arrayNode(),
          NODES.arrayNode().addNull(),
          NODES.arrayNode().add(1).add(2),
          NODES.objectNode(),
          NODES.objectNode().put("id", 1));

  private static final List<JsonNode> NUMBERS =
      List.of(
          number("0"),
          number("-0.0"),
          number("-1"),
          number("1e308"),
          number("-1e308"),
          number("1e16"),
          number("9.9e15"),
          number("-9.9e15"),
          number("1e-320"),
          number("1e-300"),
          number("1e-9"),
          number("1e9"),
          number("1e400"),
          number("1.00000000000000000000000000000000000000000000000000000000000001"),
          number("0." + "3".repeat(95)),
          number("0." + "3".repeat(105)),
          number("2147483647"),
          number("2147483648"),
          number("9007199254740993"),
          number("9223372036854775808"),
          number("3.0"));

  private static JsonNode number(String text) {
    return DecimalNode.valueOf(new BigDecimal(text));
  }

  /** The list that a value is or stands in. */
  private static JsonNode list(Spot spot) {
    return spot.value().isArray() ? spot.value() : spot.parent();
  }

  /** Spoils {@code spot} of {@code body}. */
  abstract void spoil(Spot spot, JsonNode body, Random random);

  /** Spoils {@code body} in some place. */
  static String of(JsonNode body, Random random) {
    if (body.isEmpty()) {
      return "NOTHING";
    }
    Mutation mutation = Chance.of(random, values());
    mutation.spoil(Spot.in(body, random), body, random);
    return mutation.name();
  }
}
