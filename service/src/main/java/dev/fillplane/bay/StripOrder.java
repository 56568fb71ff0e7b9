package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Orders the pieces of a bay so that the pour goes on toward the way out.
 *
 * <p>Each piece has a rank, the number of strips between it and the piece at the way out; the
 * highest rank is poured first, within a rank the earlier strip, then the piece further right.
 * Where the way leads back against the travel (the leg of an L or a U) the rank counts the way
 * round, so that such a leg is poured from its end toward the bend; going round a column, less than
 * 1 m deep, is no such leg. What lies more than 1.5 m beyond the way out counts like any other
 * piece, so that both ends converge on the way out. Last of all, pieces that would be cut off from
 * the way out are put before the one that cuts them off ({@link SafeOrder}).
 */
final class StripOrder {

  private static final double REACH = 1.5;
  private static final double NOOK = 1.0;
  private static final double AT_THE_WAY_OUT = 0.01;

  /** Half a doorway: pieces so near to the way out are poured from outside. */
  private static final double FROM_OUTSIDE = 0.5;

  private final List<Piece> pieces;
  private final TravelChoice choice;
  private final double width;
  private final Touching touching;
  private final double[] fromWayOut;
  private final int last;
  private final int[] rank;

  private StripOrder(List<Piece> pieces, TravelChoice choice, double width) {
    this.pieces = pieces;
    this.choice = choice;
    this.width = width;
    this.touching = Touching.of(pieces);
    this.fromWayOut = fromWayOut();
    this.last = nearest();
    this.rank = ranks();
  }

  static StripOrder of(List<Piece> pieces, TravelChoice choice, double width) {
    return new StripOrder(pieces, choice, width);
  }

  /** The strips on plan, in order, with their fronts. */
  List<Strip> strips() {
    List<Integer> sorted = SafeOrder.of(byRank(), touching, this::atWayOut);
    int[] order = new int[pieces.size()];
    for (int i = 0; i < sorted.size(); i++) {
      order[sorted.get(i)] = i + 1;
    }
    return sorted.stream().map(i -> strip(i, order)).toList();
  }

  private List<Integer> byRank() {
    return IntStream.range(0, pieces.size())
        .boxed()
        .sorted(
            Comparator.comparing((Integer i) -> -rank[i])
                .thenComparing(i -> pieces.get(i).row())
                .thenComparing(i -> pieces.get(i).from()))
        .toList();
  }

  private boolean atWayOut(int piece) {
    return piece == last || fromWayOut[piece] <= FROM_OUTSIDE;
  }

  private Strip strip(int i, int[] order) {
    Piece piece = pieces.get(i);
    Polygon onPlan = (Polygon) choice.travel().toPlan().transform(piece.shape());
    List<Front> fronts = new ArrayList<>();
    for (Touching.Seam seam : touching.of(i)) {
      if (order[seam.other()] > order[i]) {
        fronts.add(new Front(order[seam.other()], seam.from(), seam.to()));
      }
    }
    fronts.sort(Comparator.comparingInt(Front::later).thenComparingDouble(Front::from));
    return new Strip(order[i], onPlan, piece.fill(), piece.from(), piece.to(), fronts);
  }

  private double[] fromWayOut() {
    Point exit =
        new GeometryFactory()
            .createPoint(
                new Coordinate(
                    choice.travel().along(choice.wayOut()),
                    choice.travel().across(choice.wayOut())));
    return pieces.stream().mapToDouble(piece -> piece.shape().distance(exit)).toArray();
  }

  private int nearest() {
    int nearest = 0;
    for (int i = 1; i < pieces.size(); i++) {
      boolean later = pieces.get(i).row() > pieces.get(nearest).row();
      double least = fromWayOut[nearest] + (later ? AT_THE_WAY_OUT : -AT_THE_WAY_OUT);
      nearest = fromWayOut[i] < least ? i : nearest;
    }
    return nearest;
  }

  private int[] ranks() {
    int[] steps = touching.stepsFrom(last);
    int[] detour = new int[steps.length];
    for (int i = 0; i < steps.length; i++) {
      int straight = Math.abs(rowsBefore(i));
      detour[i] = steps[i] < 0 ? 0 : steps[i] - straight;
      steps[i] = straight + detour[i];
    }
    int[] deepest = touching.largestInGroup(detour);
    double beyond = choice.extent().getMaxX() - choice.travel().along(choice.wayOut());
    for (int i = 0; i < steps.length; i++) {
      boolean direct = deepest[i] * width <= 2 * NOOK;
      boolean within = rowsBefore(i) >= 0 || beyond <= REACH;
      steps[i] = direct && within ? rowsBefore(i) : steps[i];
    }
    return steps;
  }

  private int rowsBefore(int piece) {
    return pieces.get(last).row() - pieces.get(piece).row();
  }
}
