package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Trees;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Ways to tell the same floor again: moved, turned, in another order. Each changes the request. */
public final class Retold {

  private Retold() {}

  /** A new place for a point on plan. */
  public interface Move {
    double[] of(double x, double y);
  }

  /** Turned about the origin. */
  public static Move turn(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return (x, y) -> new double[] {c * x - s * y, s * x + c * y};
  }

  /** Everything on plan at new places; not what is told as a table. */
  public static void move(ObjectNode request, Move move) {
    for (JsonNode room : request.get("rooms")) {
      room.at("/outline/coordinates").forEach(ring -> ring.forEach(p -> position(p, move)));
      for (JsonNode opening : room.path("openings")) {
        position(opening.get("from"), move);
        position(opening.get("to"), move);
      }
    }
    request.at("/survey/setups").forEach(s -> s.get("readings").forEach(r -> point(r, move)));
    request.at("/survey/elevations").forEach(known -> point(known, move));
    request.path("probes").forEach(probe -> point(probe, move));
  }

  private static void position(JsonNode position, Move move) {
    double[] to = move.of(position.get(0).doubleValue(), position.get(1).doubleValue());
    ((ArrayNode) position).removeAll().add(to[0]).add(to[1]);
  }

  private static void point(JsonNode point, Move move) {
    if (point.has("x")) {
      double[] to = move.of(point.get("x").doubleValue(), point.get("y").doubleValue());
      ((ObjectNode) point).put("x", to[0]).put("y", to[1]);
    }
  }

  /** A list in another order, if it is there. */
  public static void shuffle(JsonNode list, Random random) {
    if (!list.isArray()) {
      return;
    }
    List<JsonNode> elements = Trees.elements(list);
    Collections.shuffle(elements, random);
    Trees.refill(list, elements);
  }

  /** Every ring from another corner, and the other way round. */
  public static void ringsFromElsewhere(ObjectNode request, Random random) {
    for (JsonNode room : request.get("rooms")) {
      for (JsonNode ring : room.at("/outline/coordinates")) {
        List<JsonNode> corners = Trees.elements(ring);
        corners.remove(0);
        Collections.rotate(corners, random.nextInt(corners.size()));
        Collections.reverse(corners);
        corners.add(corners.get(0).deepCopy());
        Trees.refill(ring, corners);
      }
    }
  }

  /** A constant added to every elevation, or taken from every reading. */
  public static void raise(ObjectNode request, double by) {
    for (String list : List.of("/survey/elevations", "/survey/benchmarks")) {
      request.at(list).forEach(known -> add(known, "elevation", by));
    }
  }

  private static void add(JsonNode to, String name, double by) {
    ((ObjectNode) to).put(name, to.get(name).doubleValue() + by);
  }
}
