package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.room.Position;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Chooses the direction in which a bay is poured, and which of several exits it leads to.
 *
 * <p>Directions across and along the longer walls compete ({@link Directions}). Of each pair of
 * direction and exit three shares are weighed (own rule, no source):
 *
 * <ul>
 *   <li>how far before the end of the travel the exit lies, as a share of the travel, times 3: the
 *       travel follows the exit, also when the deep part is at the door;
 *   <li>the mean front (area over travel) as a share of the longest mean front of any direction,
 *       and by how many times 3 m it is over the 6 m that a crew can serve by hand;
 *   <li>how far ahead of the middle of the floor the middle of the pour lies, as a share of the
 *       travel, times 0.5: the deep part comes first where that costs little.
 * </ul>
 *
 * The lowest sum wins; where two are equal the exit further to the left of the travel does, which
 * does not depend on how the plan is turned.
 *
 * @param travel the direction, and its frame
 * @param wayOut the exit
 * @param extent the bay in that frame
 */
record TravelChoice(Travel travel, Position wayOut, Envelope extent) {

  private static final double EQUAL = 1e-6;

  private record Weighed(TravelChoice choice, double score, double left) {

    boolean beats(Weighed other) {
      double gain = other.score - score;
      return gain > EQUAL || (gain >= -EQUAL && left > other.left + EQUAL);
    }
  }

  /** Chooses for a room that may be left at {@code exits}, at least one. */
  static TravelChoice of(Polygon room, List<Position> exits, Depths depths) {
    List<Travel> directions = Directions.of(room);
    MiddleOfPour middle = MiddleOfPour.of(room, directions.get(0), depths);
    double longest = 0;
    for (Travel travel : directions) {
      longest = Math.max(longest, room.getArea() / extentOf(room, travel).getWidth());
    }
    Weighed best = null;
    for (Travel travel : directions) {
      for (Position exit : exits) {
        Weighed next = weigh(room, travel, exit, middle, longest);
        best = best == null || next.beats(best) ? next : best;
      }
    }
    return best.choice();
  }

  private static Weighed weigh(
      Polygon room, Travel travel, Position exit, MiddleOfPour middle, double longest) {
    Envelope extent = extentOf(room, travel);
    double length = extent.getWidth();
    double before = Math.max(0, (extent.getMaxX() - travel.along(exit)) / length);
    double front = room.getArea() / length;
    double over = Math.max(0, front - Bay.LONGEST_FRONT_BY_HAND) / 3;
    double ahead = (travel.along(middle.pour()) - travel.along(middle.floor())) / length;
    double left = travel.across(exit) - travel.across(middle.floor());
    double score = 3 * before + front / longest + over + 0.5 * ahead;
    return new Weighed(new TravelChoice(travel, exit, extent), score, left);
  }

  private static Envelope extentOf(Polygon room, Travel travel) {
    return travel.toFrame().transform(room).getEnvelopeInternal();
  }
}
